import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { mismatches } from "../../shared/levels.ts";
import { sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "line-level-into-speaker-input",
    group: "speakers",
    severity: "weak",
    summary: "An input for speaker level, and a speaker itself, is driven by a speaker output.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
  },
  *check(context) {
    const links = mismatches(
      context,
      "speaker",
      (point) => point.direction === "takes",
      (point) => point.means.group === "line-level" && point.direction === "gives",
    );
    for (const { from, to } of links) {
      const bare = to.every((point) => point.part.kind === "speaker");
      yield {
        severity: bare ? "fault" : "weak",
        message: `Line outputs go into ${bare ? "speakers" : "inputs for speaker level"}: ${sayPoints(context, from)} to ${sayPoints(context, to)}.`,
        consequence: bare
          ? "A line output cannot move a speaker: there is next to no sound, and the output clips."
          : "The input gets a tenth of the volts that it is made for: low volume, and hiss when it is turned up.",
        remedy: bare
          ? "Put an amplifier between."
          : "Use the inputs for line level, or put a line driver or the source's speaker outputs before these.",
        about: [...from, ...to].map((point) => point.at),
      };
    }
  },
});
