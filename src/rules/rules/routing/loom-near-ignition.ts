import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { aboutWires, loomsWhere, sayRuns, together } from "../../shared/looms.ts";

export default defineRule({
  meta: {
    id: "loom-near-ignition",
    group: "routing",
    severity: "weak",
    summary: "The loom stays clear of ignition leads and coils, or is sleeved against them.",
    source: "a chassis maker's guide for body builders; common practice otherwise, no source",
    reads: [...NAMES, "wiring", "runs"],
    fixable: false,
  },
  *check(context) {
    const close = loomsWhere(
      context,
      ({ near, covering }) => near.includes("ignition") && !SLEEVES.has(covering),
    );
    for (const looms of together(close)) {
      const { wires } = looms[0]!;
      yield {
        message: `${sayRuns(looms)} comes close to the ignition's leads or coils.`,
        consequence:
          "Sparks jump to it through tired insulation, and its signals pick up the crackle of the ignition.",
        remedy:
          "Lay it another way, or at least 100 mm off and in conduit; keep to the vehicle maker's instructions there.",
        about: aboutWires(wires),
      };
    }
  },
});

const SLEEVES: ReadonlySet<string> = new Set(["conduit", "heat-sleeve"]);
