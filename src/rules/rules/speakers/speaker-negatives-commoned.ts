import type { Point } from "../../../electrical/points.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { hasCommonNegative, speakerPoints } from "../../shared/speakers.ts";
import { byName, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "speaker-negatives-commoned",
    group: "speakers",
    severity: "fault",
    summary: "The minus of a bridged output meets no other output's minus.",
    source:
      "Basic Car Audio Electronics (bcae1.com): both leads of a bridged output stand at half the supply; that a unit of which nothing is said is bridged: from memory",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
  },
  *check(context) {
    const seen = new Set<number>();
    for (const { means, direction, part, contact } of speakerPoints(context)) {
      if (means.polarity !== "minus" || direction !== "gives") continue;
      const circuit = context.points.circuitAt(part.id, contact.number);
      if (seen.has(circuit.circuit.id)) continue;
      seen.add(circuit.circuit.id);
      if (circuit.points.length < 2 || context.meetsInCap(circuit)) continue;
      const commoned = commonedNegatives(
        circuit.points
          .filter((point) => point.means.group === "speaker" && point.direction === "gives")
          .filter((point) => !hasCommonNegative(context, point))
          .sort(byName),
      );
      if (commoned.length < 2) continue;
      yield {
        message: `Speaker negatives are tied together: ${sayPoints(context, commoned)}.`,
        consequence:
          "Bridged output stages drive each other through the common lead: they overheat, shut down, or die.",
        remedy:
          "Give each speaker its own pair back to the unit. Where the vehicle has one common negative, run new pairs.",
        about: commoned.map((point) => point.at),
      };
    }
  },
});

/** Negatives of different channels of one box. */
function commonedNegatives(outputs: readonly Point[]): readonly Point[] {
  const byUnit = new Map<string | null, Point[]>();
  for (const point of outputs) {
    if (point.means.polarity !== "minus") continue;
    const own = byUnit.get(point.unit);
    if (own) own.push(point);
    else byUnit.set(point.unit, [point]);
  }
  return [...byUnit.values()].find((own) => own.some((point) => point.means !== own[0]!.means)) ?? [];
}
