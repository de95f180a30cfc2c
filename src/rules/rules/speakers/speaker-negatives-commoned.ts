import { isGround } from "../../../catalogue/functions.ts";
import type { Point } from "../../../electrical/points.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { hasCommonNegative } from "../../speakers.ts";
import { byName, isOrAre, sayGrounds, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "speaker-negatives-commoned",
    group: "speakers",
    severity: "fault",
    summary: "The leads of a bridged output meet no other output's and no ground.",
    source:
      "Basic Car Audio Electronics (bcae1.com): both leads of a bridged output stand at half the supply; that a unit of which nothing is said is bridged: from memory",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
  },
  *check(context) {
    for (const circuit of context.points.circuits) {
      if (circuit.points.length < 2 || context.meetsInCap(circuit)) continue;
      const outputs = circuit.points
        .filter((point) => point.means.group === "speaker" && point.direction === "gives")
        .filter((point) => !hasCommonNegative(context, point))
        .sort(byName);
      if (!outputs.length) continue;
      const grounds = circuit.points.filter((point) => isGround(point.means.id)).sort(byName);
      const commoned = commonedNegatives(outputs);
      if (grounds.length) {
        yield {
          message: `${sayPoints(context, outputs)} ${isOrAre(outputs)} grounded, at ${sayGrounds(context, grounds)}.`,
          consequence:
            "A bridged output stands at half the supply on both leads: grounded, its stage overheats and dies.",
          remedy: "Take the ground off. Each speaker has its own two leads back to the unit.",
          about: [...outputs, ...grounds].map((point) => point.at),
        };
      } else if (commoned.length > 1) {
        yield {
          message: `Speaker negatives are tied together: ${sayPoints(context, commoned)}.`,
          consequence:
            "Bridged output stages drive each other through the common lead: they overheat, shut down, or die.",
          remedy:
            "Give each speaker its own pair back to the unit. Where the vehicle has one common negative, run new pairs.",
          about: commoned.map((point) => point.at),
        };
      }
    }
  },
});

/** Negatives of different channels of one box. */
function commonedNegatives(outputs: readonly Point[]): readonly Point[] {
  const negatives = outputs.filter((point) => point.means.polarity === "minus");
  const byUnit = new Map<string | null, Point[]>();
  for (const point of negatives) byUnit.set(point.unit, [...(byUnit.get(point.unit) ?? []), point]);
  return [...byUnit.values()].find((own) => own.some((point) => point.means !== own[0]!.means)) ?? [];
}
