import { isGround } from "../../../catalogue/functions.ts";
import type { Point } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { pointsWithinFuses } from "../../shared/near.ts";
import { hasCommonNegative, outputAt, speakerPoints, takingPairs } from "../../shared/speakers.ts";
import { byName, isOrAre, sayGrounds, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "speaker-lead-grounded",
    group: "speakers",
    severity: "fault",
    summary: "No lead of a bridged output, and none of a speaker that hangs on one, is on a ground.",
    source:
      "Basic Car Audio Electronics (bcae1.com): both leads of a bridged output stand at half the supply; that a unit of which nothing is said is bridged: from memory",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
    brings: ["required-lead-missing"],
  },
  *check(context) {
    const told = new Map<number, Point[]>();
    const note = (point: Point) => {
      const { id } = context.circuitOf(point).circuit;
      const list = told.get(id);
      if (list) list.push(point);
      else told.set(id, [point]);
    };
    const outputs = speakerPoints(context).filter(({ direction }) => direction === "gives");
    for (const output of outputs) if (!hasCommonNegative(context, output)) note(output);
    if (!told.size) return;
    for (const lead of farLeads(context)) note(lead);
    for (const leads of told.values()) {
      const circuit = context.circuitOf(leads[0]!);
      if (context.meetsInCap(circuit)) continue;
      const grounds = pointsWithinFuses(context, circuit).filter((point) => isGround(point.means.id));
      if (!grounds.length) continue;
      grounds.sort(byName);
      leads.sort(byName);
      yield {
        message: `${sayPoints(context, leads)} ${isOrAre(leads)} grounded, at ${sayGrounds(context, grounds)}.`,
        consequence:
          "A bridged output stands at half the supply on both leads: grounded, its stage overheats and dies, often that channel alone.",
        remedy: "Take the ground off. Each speaker has its own two leads back to the unit.",
        about: [...leads, ...grounds].map((point) => point.at),
      };
    }
  },
});

/** Leads of speakers whose other lead hangs on a bridged output: through the coil the output is grounded with them. */
function farLeads(context: Context): readonly Point[] {
  const found: Point[] = [];
  for (const { plus, minus } of takingPairs(context)) {
    if (!minus) continue;
    for (const [near, far] of [
      [plus, minus],
      [minus, plus],
    ] as const) {
      const output = outputAt(context, near);
      if (output && !hasCommonNegative(context, output) && !outputAt(context, far)) found.push(far);
    }
  }
  return found;
}
