import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { aboutWires, loomsWhere, sayRuns, sayUnfused, together, unfusedIn } from "../../shared/looms.ts";

export default defineRule({
  meta: {
    id: "loom-near-heat",
    group: "routing",
    severity: "weak",
    summary: "A loom that comes close to something hot is sleeved against it, or made of wire that bears it.",
    source:
      "a chassis maker's guide for body builders (125 °C conduit under the bonnet); FAA AC 43.13-1B chapter 11",
    reads: [...CIRCUITS, ...NAMES, "runs", "materials"],
    fixable: false,
    brings: ["insulation-too-cool-for-engine-bay"],
  },
  *check(context) {
    const hot = loomsWhere(
      context,
      ({ near, covering }) => near.includes("heat") && covering !== "heat-sleeve" && covering !== "conduit",
    ).filter(({ wires }) => wires.some(({ insulation }) => !BEARS_HEAT.has(insulation)));
    for (const looms of together(hot)) {
      const { wires } = looms[0]!;
      const unfused = unfusedIn(context, wires);
      yield {
        severity: unfused.length ? "danger" : "weak",
        message: `${sayRuns(looms)} comes close to something hot without a heat sleeve or conduit.${sayUnfused(unfused)}`,
        consequence: unfused.length
          ? "The insulation softens, the copper touches metal, and nothing stops the current: fire."
          : "The insulation softens and lets the copper through.",
        remedy:
          "Lay the loom another way, or put a heat sleeve or conduit for 125 °C over it and clip it away.",
        about: aboutWires(wires, unfused),
      };
    }
  },
});

const BEARS_HEAT: ReadonlySet<string> = new Set(["cross-linked-125", "silicone"]);
