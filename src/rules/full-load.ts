import { conditionsOf, type KeyState } from "../electrical/operate/key-state.ts";
import { operate } from "../electrical/operate/operate.ts";
import type { Readings } from "../electrical/operate/readings.ts";
import type { ContactKey } from "../graph/contacts.ts";
import type { Context } from "./context.ts";

const remembered = new WeakMap<Context, Readings>();

/** Under way with all on that can be on: when grounds carry the most. Solved when a rule first asks. */
export function fullLoad(context: Context): Readings {
  let found = remembered.get(context);
  if (!found) {
    found = operate(context.harness, context.traced, fullState(context));
    remembered.set(context, found);
  }
  return found;
}

function fullState({ harness }: Context): KeyState {
  return { key: "run", conditions: conditionsOf(harness) };
}

/** Volts of a contact over the frame; `null` where it floats. */
export function voltsAt(readings: Readings, key: ContactKey): number | null {
  const volts = readings.contacts.get(key);
  return typeof volts === "number" ? volts : null;
}

/** "0.35 V", "28 mV": two figures, as a meter shows them. */
export function sayVolts(volts: number): string {
  const size = Math.abs(volts);
  return size < 0.0995 ? `${Number((size * 1000).toPrecision(2))} mV` : `${Number(size.toPrecision(2))} V`;
}
