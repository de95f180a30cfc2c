import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { isLineInput, mismatches } from "../../shared/levels.ts";
import { isSpeaker } from "../../shared/speakers.ts";
import { sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "speaker-level-into-line-input",
    group: "speakers",
    severity: "fault",
    summary: "What drives a speaker reaches a line input only through a converter.",
    source:
      "Basic Car Audio Electronics (bcae1.com), line output converters; the levels: a how-to page on an amplifier with a factory radio",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
  },
  *check(context) {
    const links = mismatches(
      context,
      "line-level",
      (point) => isLineInput(context, point),
      (point) => isSpeaker(point) && point.direction === "gives",
    );
    for (const { from, to } of links) {
      yield {
        message: `Speaker outputs go straight into line inputs: ${sayPoints(context, from)} to ${sayPoints(context, to)}.`,
        consequence:
          "Speaker level is some 2 to 15 V, a line input wants 0.5 to 4 V: gross distortion, a thump at every switch-on as both leads step to half the supply, and in the end a hurt input.",
        remedy:
          "Put a line output converter between, or use the amplifier's inputs for speaker level where it has them.",
        about: [...from, ...to].map((point) => point.at),
      };
    }
  },
});
