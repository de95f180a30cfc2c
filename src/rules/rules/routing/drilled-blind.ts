import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { aboutWires, loomsWhere, sayRuns, together } from "../../shared/looms.ts";

export default defineRule({
  meta: {
    id: "drilled-blind",
    group: "routing",
    severity: "danger",
    summary: "Before a hole is drilled for the loom, somebody has looked at what lies behind.",
    source: "a tracker maker's wiring guide (look behind first, use a depth stop, existing holes first)",
    reads: [...NAMES, "wiring", "runs"],
    fixable: false,
  },
  *check(context) {
    for (const looms of together(loomsWhere(context, ({ drilled }) => drilled === "blind"))) {
      const { wires } = looms[0]!;
      yield {
        message: `A hole is to be drilled for ${sayRuns(looms)}, and nobody has looked behind.`,
        consequence: "The drill meets a fuel tank, a brake line, an airbag or another loom.",
        remedy:
          "Look behind first, use holes that are there before new ones, and put a depth stop on the drill. Keep to the vehicle maker's instructions on where not to drill.",
        about: aboutWires(wires),
      };
    }
  },
});
