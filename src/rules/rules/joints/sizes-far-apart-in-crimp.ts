import { digits } from "../../../electrical/figure.ts";
import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { barrelsFor, sideArea } from "../../shared/barrels.ts";
import { changed, jointsOf } from "../../shared/joints.ts";
import { sayList, sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "sizes-far-apart-in-crimp",
    group: "joints",
    severity: "weak",
    summary: "The wires on both sides of a crimp are of sizes that one barrel grips.",
    source:
      "a boating magazine's page on folding back a thin wire (not for large differences); crimp sheets: sizes have to match the barrel; twice the copper as the limit is a threshold of our own",
    reads: [...NAMES, "wiring", "joints", "sizes", "settings"],
    fixable: true,
  },
  *check(context) {
    const most = context.profile.limits.wiresInCrimp.value;
    for (const { part, sides, wires } of jointsOf(context)) {
      // One with too many wires is told as that; its sizes are of no more account.
      if (part.method !== "crimped-butt" || wires.length > most) continue;
      const [left, right] = sides.map(sideArea);
      if (!left!.isKnown || !right!.isKnown) continue;
      const [thin, thick] = [left!.sum_mm2, right!.sum_mm2].sort((a, b) => a - b);
      if (thick! <= thin! * MOST_TIMES + 1e-9 || barrelsFor([thin!, thick!]).length) continue;
      const [thinSide, thickSide] = left!.sum_mm2 < right!.sum_mm2 ? sides : [sides[1], sides[0]];
      yield {
        message: `${part.designation} crimps ${sayList(thinSide.map(sayWire))}, ${digits(thin!)} mm², to ${sayList(thickSide.map(sayWire))}, ${digits(thick!)} mm²; no one barrel holds both.`,
        consequence:
          "A barrel that suits the thick side lets the thin wire slip out; one that suits the thin side cuts the thick.",
        remedy:
          "Use a step-down crimp that is made for both sizes, solder and sleeve the joint, or fold the thin wire back to double it where the difference is small.",
        about: [{ part: part.id }],
        suggestions: [
          changed(part, `Make ${part.designation} a soldered joint`, {
            method: "solder-and-sleeve",
            barrel: "unknown",
          }),
        ],
      };
    }
  },
});

const MOST_TIMES = 2;
