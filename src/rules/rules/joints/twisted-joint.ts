import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { jointsOf, madeAnew } from "../../shared/joints.ts";
import { sayList, sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "twisted-joint",
    group: "joints",
    severity: "fault",
    summary: "Leads are soldered, crimped or clamped, never only twisted together.",
    source: "an alarm maker's fitting guide (never twist and tape); common practice otherwise, no source",
    reads: [...NAMES, "wiring", "joints", "settings"],
    fixable: true,
    brings: ["joint-unsealed-in-wet-place"],
  },
  *check(context) {
    for (const joint of jointsOf(context)) {
      const { part, wires } = joint;
      if (part.method !== "twisted") continue;
      const tape = part.cover === "tape" || part.cover === "cloth-over-tape" ? " and taped" : "";
      yield {
        message: `${sayList(wires.map(sayWire))} are only twisted together${tape} at ${part.designation}.`,
        consequence: "The twist works loose in heat and shake: the circuit opens, or the bare ends short.",
        remedy: "Make the joint anew: soldered and sleeved, or crimped.",
        about: [{ part: part.id }],
        suggestions: madeAnew(context, joint),
      };
    }
  },
});
