import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { aboutWires, loomsWhere, sayRuns, sayUnfused, together, unfusedIn } from "../../shared/looms.ts";

export default defineRule({
  meta: {
    id: "loom-under-trim-screws",
    group: "routing",
    severity: "weak",
    summary: "The loom lies where no screw of the trim and no panel can reach it.",
    source: "FCS 1362:2010 §4.10",
    reads: [...CIRCUITS, ...NAMES, "runs"],
    fixable: false,
  },
  *check(context) {
    for (const looms of together(loomsWhere(context, ({ near }) => near.includes("trim-screws")))) {
      const { wires } = looms[0]!;
      const unfused = unfusedIn(context, wires);
      yield {
        severity: unfused.length ? "danger" : "weak",
        message: `${sayRuns(looms)} lies where the trim's screws come through.${sayUnfused(unfused)}`,
        consequence: unfused.length
          ? "A screw goes through the loom, and nothing stops the current: fire."
          : "A screw goes through the loom when the trim is put back, or the panel pinches it.",
        remedy: "Move it clear of the screws, and watch the loom while the trim is put back.",
        about: aboutWires(wires, unfused),
      };
    }
  },
});
