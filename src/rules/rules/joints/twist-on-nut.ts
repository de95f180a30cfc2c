import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { jointsOf, madeAnew } from "../../shared/joints.ts";
import { sayList, sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "twist-on-nut",
    group: "joints",
    severity: "fault",
    summary: "No household twist-on nut joins leads in a vehicle.",
    source: "46 CFR 143.575 (no twist-on connectors); a chassis maker's guide for body builders",
    reads: [...NAMES, "wiring", "joints", "settings"],
    fixable: true,
    brings: ["joint-unsealed-in-wet-place", "taped-joint"],
  },
  *check(context) {
    for (const joint of jointsOf(context)) {
      const { part, wires } = joint;
      if (part.method !== "twist-on-nut") continue;
      yield {
        message: `${part.designation}, which joins ${sayList(wires.map(sayWire))}, is a twist-on nut for house wiring.`,
        consequence: "It is made for solid wire that lies still; on stranded wire it shakes loose.",
        remedy: "Crimp the joint, or solder and sleeve it.",
        about: [{ part: part.id }],
        suggestions: madeAnew(context, joint),
      };
    }
  },
});
