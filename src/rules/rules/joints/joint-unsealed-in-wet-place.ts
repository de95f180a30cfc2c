import type { Splice } from "../../../graph/harness.ts";
import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { jointsOf, METHOD_WORDS, sleeved, wetPlaceOf } from "../../shared/joints.ts";
import { sayList, sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "joint-unsealed-in-wet-place",
    group: "joints",
    severity: "fault",
    summary: "A joint outside, in the engine bay or in a door is sealed against water.",
    source:
      "a vehicle maker's procedure for splices near airbags (adhesive must show at both ends of the sleeve); a chassis maker's guide for body builders; a tracker maker's wiring guide",
    reads: [...NAMES, "wiring", "joints", "runs"],
    fixable: true,
    brings: ["taped-joint", "joint-bare"],
  },
  *check(context) {
    for (const joint of jointsOf(context)) {
      const { part, wires } = joint;
      const words = UNSEALED[part.cover];
      if (!words) continue;
      const place = wetPlaceOf(context, joint);
      if (!place) continue;
      yield {
        message: `${part.designation}, ${METHOD_WORDS[part.method]} of ${sayList(wires.map(sayWire))}, lies ${place} with ${words}.`,
        consequence:
          "Water gets in: the copper turns green, and water creeps along inside the insulation to the next box.",
        remedy:
          "Use an adhesive-lined sleeve or a sealed crimp, see that adhesive shows at both ends, and let the leads hang in a loop below the joint.",
        about: [{ part: part.id }],
        fix: sleeved(joint),
      };
    }
  },
});

/** A housing may be sealed or not: the drawing does not say, so it is let stand. */
const UNSEALED: Readonly<Partial<Record<Splice["cover"], string>>> = {
  sleeve: "a sleeve that has no adhesive",
  tape: "tape over it",
  "cloth-over-tape": "tape over it",
  none: "nothing over it",
};
