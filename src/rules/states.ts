import { designStates } from "../electrical/operate/key-state.ts";
import { operate } from "../electrical/operate/operate.ts";
import type { Readings } from "../electrical/operate/readings.ts";
import type { Context } from "./context.ts";

const remembered = new WeakMap<Context, readonly Readings[]>();

/** Every key position, with nothing on and with everything on. Solved when a rule first asks, each from the one before. */
export function everyState(context: Context): readonly Readings[] {
  let known = remembered.get(context);
  if (!known) {
    const found: Readings[] = [];
    for (const state of designStates(context.harness)) {
      const before = found[found.length - 1] ?? null;
      found.push(operate(context.harness, context.traced, state, { before }));
    }
    known = found;
    remembered.set(context, known);
  }
  return known;
}
