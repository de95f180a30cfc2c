import type { Run } from "../../../graph/harness.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { aboutWires, loomsWhere, sayRun, sayUnfused, together, unfusedIn } from "../../shared/looms.ts";
import { sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "loom-near-moving-parts",
    group: "routing",
    severity: "weak",
    summary:
      "The loom stays clear of pedals, seat rails and whatever else moves, or a fixed conduit holds it off.",
    source: "FAA AC 43.13-1B chapter 11; a chassis maker's guide for body builders",
    reads: [...CIRCUITS, ...NAMES, "runs"],
    fixable: false,
  },
  *check(context) {
    const close = loomsWhere(
      context,
      ({ near, covering }) => near.some((one) => MOVING.has(one)) && covering !== "conduit",
    );
    for (const looms of together(close)) {
      const { wires } = looms[0]!;
      const unfused = unfusedIn(context, wires);
      const pedals = looms.some(({ run }) => run.near.includes("pedals"));
      const places = looms.map(({ run }) => `${sayRun(run)} comes close to ${sayMoving(run)}`);
      yield {
        severity: pedals || unfused.length ? "danger" : "weak",
        message: `${sayList(places)}.${sayUnfused(unfused)}`,
        consequence: pedals
          ? "A loop of it that hangs down catches a pedal, when somebody has to brake."
          : "It is pinched or sawn through when the part moves.",
        remedy: `Lay it another way, or hold it off in a fixed conduit, tied at short distances.${pedals ? " Try every pedal to its stop, as the vehicle's maker asks, before it is driven." : " Move the part to both its ends and look."}`,
        about: aboutWires(wires, unfused),
      };
    }
  },
});

const MOVING: ReadonlyMap<Run["near"][number], string> = new Map([
  ["pedals", "the pedals"],
  ["seat-rails", "the rails of a seat"],
  ["moving-parts", "parts that move"],
]);

function sayMoving({ near }: Run): string {
  return sayList([...MOVING].flatMap(([hazard, words]) => (near.includes(hazard) ? [words] : [])));
}
