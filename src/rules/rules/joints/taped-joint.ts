import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { jointsOf, sleeved } from "../../shared/joints.ts";
import { sayList, sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "taped-joint",
    group: "joints",
    severity: "weak",
    summary: "A joint is covered by a sleeve or a housing, not by tape alone.",
    source:
      "an alarm maker's fitting guide; FCS 1362:2010 §2.6.1.4.2 allows tape under cloth tape for a joint into an existing loom",
    reads: [...NAMES, "wiring", "joints"],
    fixable: true,
  },
  *check(context) {
    for (const joint of jointsOf(context)) {
      const { part, wires } = joint;
      // A twisted joint is told with its tape, for there the tape is the lesser trouble.
      if (part.cover !== "tape" || part.method === "twisted") continue;
      yield {
        message: `${part.designation}, which joins ${sayList(wires.map(sayWire))}, has only tape over it.`,
        consequence: "Tape lets go in heat: first it is sticky, then the joint is bare.",
        remedy: "Shrink a sleeve over the joint; tape may go over the sleeve.",
        about: [{ part: part.id }],
        fix: sleeved(joint),
      };
    }
  },
});
