import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { hasCommonNegative, isSpeaker, speakerPoints } from "../../shared/speakers.ts";
import { byName, compareNames, sayList, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "unused-speaker-leads-together",
    group: "speakers",
    severity: "fault",
    summary: "Speaker leads that are not used are insulated each by itself.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
    brings: ["several-spares-under-one-cap", "outputs-tied", "speaker-negatives-commoned", "loose-lead"],
  },
  *check(context) {
    const seen = new Set<number>();
    for (const first of speakerPoints(context)) {
      if (first.direction !== "gives" || first.unit === null) continue;
      const circuit = context.circuitOf(first);
      if (seen.has(circuit.circuit.id)) continue;
      seen.add(circuit.circuit.id);
      const { points, caps } = circuit;
      if (new Set(points.map(({ means }) => means.id)).size < 2) continue;
      // Where something else hangs there, the leads are in use, and other rules judge how.
      if (!points.every((point) => isSpeaker(point) && point.unit === first.unit)) continue;
      if (!points.every((point) => point.direction === "gives")) continue;
      const minuses = points.every((point) => point.means.polarity === "minus");
      if (minuses && hasCommonNegative(context, first)) continue;
      const leads = [...points].sort(byName);
      const names = caps.map((id) => context.harness.parts[id]?.designation ?? id).sort(compareNames);
      yield {
        message: `Speaker leads that drive nothing are together${names.length ? ` under ${sayList(names)}` : ""}: ${sayPoints(context, leads)}.`,
        consequence: "The output stage works into a short: it shuts down, or the channel dies.",
        remedy:
          "Put a cap on each of the two leads alone, and keep the pair tied together so that it can be found.",
        about: [...leads.map((point) => point.at), ...caps.map((part) => ({ part }))],
      };
    }
  },
});
