import type { Run, Wire } from "../graph/harness.ts";
import type { Context } from "./context.ts";
import { compareNames } from "./words.ts";

/** The runs that come close to a hazard, each with the wires in it; a run without wires troubles nobody. */
export function wiresNear(
  { harness }: Context,
  hazard: Run["near"][number],
): readonly { readonly run: Run; readonly wires: readonly Wire[] }[] {
  const near = Object.values(harness.runs).filter((run) => run.near.includes(hazard));
  if (!near.length) return [];
  return near
    .sort((a, b) => compareNames(a.designation, b.designation))
    .map((run) => ({
      run,
      wires: Object.values(harness.wires)
        .filter(({ runs }) => runs.includes(run.id))
        .sort((a, b) => compareNames(a.designation, b.designation)),
    }))
    .filter(({ wires }) => wires.length > 0);
}
