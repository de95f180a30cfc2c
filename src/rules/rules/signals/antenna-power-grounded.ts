import { isGround } from "../../../catalogue/functions.ts";
import type { Point } from "../../../electrical/points.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { pointsWithinFuses } from "../../shared/near.ts";
import { byName, sayPoint, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "antenna-power-grounded",
    group: "signals",
    severity: "fault",
    summary: "Antenna power meets no ground and no shield.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES, "sizes"],
    fixable: false,
  },
  *check(context) {
    const seen = new Set<number>();
    for (const power of [...context.withFunction("antenna-power")].sort(byName)) {
      if (power.direction === "none") continue;
      const circuit = context.circuitOf(power);
      if (seen.has(circuit.circuit.id)) continue;
      seen.add(circuit.circuit.id);
      const points = pointsWithinFuses(context, circuit);
      const grounded = points.filter(isReturn).sort(byName);
      if (!grounded.length) continue;
      // The output is where it hurts; a taker on the frame alone is merely dead.
      const outputs = points.filter((point) => point.means.id === "antenna-power").sort(byName);
      const giver = outputs.find((point) => point.direction === "gives") ?? power;
      yield {
        message: `${sayPoint(context, giver)} is joined to ${sayPoints(context, grounded)}.`,
        consequence: "The receiver's output or the antenna's fuse blows as soon as the radio is turned on.",
        remedy: "Part them: the shield goes to the ground, antenna power to the antenna's amplifier alone.",
        about: [giver, ...grounded].map((point) => point.at),
      };
    }
  },
});

/** A ground, or the shield of a signal. */
function isReturn({ means }: Point): boolean {
  if (isGround(means.id)) return true;
  return (means.group === "video" || means.group === "line-level") && means.polarity === "minus";
}
