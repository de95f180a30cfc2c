import { isGround } from "../../../catalogue/functions.ts";
import type { Point } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { hasCommonNegative } from "../../shared/speakers.ts";
import { byName, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "outputs-tied",
    group: "speakers",
    severity: "fault",
    summary: "One circuit has one output.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
  },
  *check(context) {
    for (const circuit of context.points.circuits) {
      if (circuit.points.length < 2 || context.meetsInCap(circuit)) continue;
      const gives = circuit.points.filter(
        (point) => point.direction === "gives" && point.means.group !== "none" && !isGround(point.means.id),
      );
      if (gives.length < 2 || !clash(context, gives)) continue;
      gives.sort(byName);
      const speakers = gives.every((point) => point.means.group === "speaker");
      yield {
        message: `Outputs are tied together: ${sayPoints(context, gives)}.`,
        consequence: speakers
          ? "Two output stages drive each other: one of them fails, or both."
          : "Each drives the other: the weaker one fails, or a circuit stays live that should be off.",
        remedy: speakers
          ? "Give each output its own lead. Where a factory amplifier stands between, unplug it, or feed its input through a converter."
          : "Part them. Where two must work one thing, put a diode into each, or a relay.",
        about: gives.map((point) => point.at),
      };
    }
  },
});

function clash(context: Context, gives: readonly Point[]): boolean {
  const [first] = gives as [Point];
  // Feeds among themselves: either one feed in two cavities, or told by `feeds-tied`.
  if (gives.every((point) => point.means.group === "feed")) return false;
  const sameFunction = gives.every((point) => point.means === first.means);
  const sameUnit = gives.every((point) => point.unit === first.unit);
  if (sameFunction && sameUnit) return false;
  // Two switches to ground may share a lead.
  if (sameFunction && first.means.active === "ground") return false;
  const negatives = gives.every(
    (point) => point.means.group === "speaker" && point.means.polarity === "minus",
  );
  // Negatives of one unit: allowed, or told by `speaker-negatives-commoned`.
  return !(negatives && (sameUnit || gives.every((point) => hasCommonNegative(context, point))));
}
