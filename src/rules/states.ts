import { conditionsOf } from "../electrical/operate/key-state.ts";
import { operate } from "../electrical/operate/operate.ts";
import type { Readings } from "../electrical/operate/readings.ts";
import type { Context } from "./context.ts";
import { fullLoad } from "./full-load.ts";

const remembered = new WeakMap<Context, readonly Readings[]>();

/** With all on that can be on: under way, parked with the key on, while the starter turns. Solved when a rule first asks. */
export function heaviestStates(context: Context): readonly Readings[] {
  let known = remembered.get(context);
  if (!known) {
    const conditions = conditionsOf(context.harness).filter((condition) => condition !== "engine-running");
    const running = fullLoad(context);
    const parked = operate(context.harness, context.traced, { key: "run", conditions }, { before: running });
    const cranking = operate(
      context.harness,
      context.traced,
      { key: "crank", conditions },
      { before: parked },
    );
    known = [running, parked, cranking];
    remembered.set(context, known);
  }
  return known;
}
