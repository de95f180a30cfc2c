import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { aboutWires, loomsWhere, sayRuns, together } from "../../shared/looms.ts";
import { isOrAre } from "../../words.ts";

export default defineRule({
  meta: {
    id: "loom-bends-across-hinge",
    group: "routing",
    severity: "weak",
    summary: "Where a loom crosses a hinge it twists along it, or a gaiter spreads its bend.",
    source: "FAA AC 43.13-1B §11-115 (bundles across hinges are to twist, not to bend)",
    reads: [...NAMES, "wiring", "runs"],
    fixable: false,
  },
  *check(context) {
    const bending = loomsWhere(
      context,
      ({ hinge, passes }) =>
        hinge === "bends-across" && !passes.some(({ protection }) => protection === "gaiter"),
    );
    for (const looms of together(bending)) {
      const { wires } = looms[0]!;
      yield {
        message: `${sayRuns(looms)} ${isOrAre(looms)} bent across a hinge each time it moves, and no gaiter spreads the bend.`,
        consequence: "The cores break one by one, inside the insulation where nobody sees it.",
        remedy:
          "Lay the loom along the hinge, so that it twists as the panel moves, or lead it through a gaiter.",
        about: aboutWires(wires),
      };
    }
  },
});
