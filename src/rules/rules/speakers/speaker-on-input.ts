import type { Point } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { isLineInput } from "../../shared/levels.ts";
import { isSpeaker } from "../../shared/speakers.ts";
import { byName, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "speaker-on-input",
    group: "speakers",
    severity: "fault",
    summary: "Speakers hang on an amplifier's outputs, sources on its inputs.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES, "sizes"],
    fixable: false,
    brings: ["line-level-into-speaker-input"],
  },
  *check(context) {
    for (const speaker of context.parts) {
      if (speaker.kind !== "speaker") continue;
      const leads = [1, 2].flatMap((contact) => context.points.pointAt(speaker.id, contact) ?? []);
      const each = leads.map((lead) => context.points.partners(lead));
      // A speaker that plays is one that an input listens to beside it.
      if (each.flat().some((point) => isSpeaker(point) && point.direction === "gives")) continue;
      const inputs = each
        .flat()
        .filter((point) => isAmplifierInput(context, point))
        .sort(byName);
      if (!inputs.length) continue;
      const joined = leads.filter((_, index) => each[index]!.some((point) => inputs.includes(point)));
      yield {
        message: `${speaker.designation} hangs on inputs: ${sayPoints(context, inputs)}.`,
        consequence: "Nothing that could move it drives it: it stays silent.",
        remedy: "Move it to the outputs, and bring the source to the inputs.",
        about: [...joined, ...inputs].map((point) => point.at),
      };
    }
  },
});

function isAmplifierInput(context: Context, point: Point): boolean {
  if (context.moduleOf(point)?.role !== "amplifier") return false;
  return isLineInput(context, point) || (point.means.group === "speaker" && point.direction === "takes");
}
