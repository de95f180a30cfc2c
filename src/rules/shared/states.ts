import type { Context } from "../context.ts";
import { fullLoad, type View } from "./full-load.ts";

const remembered = new WeakMap<Context, readonly [View, View, View]>();

/** With all on that can be on: under way, parked with the key on, while the starter turns. */
export function heaviestStates(context: Context): readonly [running: View, parked: View, cranking: View] {
  let known = remembered.get(context);
  if (!known) {
    const { solved } = context;
    const running = fullLoad(context);
    const conditions = running.state.conditions.filter((condition) => condition !== "engine-running");
    known = [running, solved.at({ key: "run", conditions }), solved.at({ key: "crank", conditions })];
    remembered.set(context, known);
  }
  return known;
}
