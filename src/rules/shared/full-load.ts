import type { StateView } from "../../electrical/operate/in-states/state-view.ts";
import { conditionsOf, type KeyState } from "../../electrical/operate/key-state.ts";
import type { ContactKey } from "../../graph/contacts.ts";
import type { Context } from "../context.ts";

/** What the harness shows in one state, each figure when it is asked for. */
export type View = StateView;

const remembered = new WeakMap<Context, View>();

/** Under way with all on that can be on: when grounds carry the most. */
export function fullLoad(context: Context): View {
  let found = remembered.get(context);
  if (!found) {
    found = context.solved.at(fullState(context));
    remembered.set(context, found);
  }
  return found;
}

function fullState({ harness }: Context): KeyState {
  return { key: "run", conditions: conditionsOf(harness) };
}

/** Volts of a contact over the frame; `null` where it floats. */
export function voltsAt(view: View, key: ContactKey): number | null {
  const volts = view.volts(key);
  return typeof volts === "number" ? volts : null;
}

/** "0.35 V", "28 mV": two figures, as a meter shows them. */
export function sayVolts(volts: number): string {
  const size = Math.abs(volts);
  return size < 0.0995 ? `${Number((size * 1000).toPrecision(2))} mV` : `${Number(size.toPrecision(2))} V`;
}
