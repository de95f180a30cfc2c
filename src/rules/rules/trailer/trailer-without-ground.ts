import type { Point } from "../../../electrical/points.ts";
import type { Connector } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { isCoupling, isRoadLamp, pointsOf, trailerSockets } from "../../shared/trailer.ts";
import { byName, compareNames, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "trailer-without-ground",
    group: "trailer",
    severity: "fault",
    summary: "A trailer's current comes back by a lead of the coupling, not by its ball.",
    source:
      "a caravan magazine's column on poor grounding; a trailer forum's test steps (under 1 Ω from the socket's ground to the frame)",
    reads: [...CIRCUITS, ...NAMES, "housings"],
    fixable: false,
    brings: ["same-function-unjoined", "required-lead-missing", "unit-without-ground", "spare-not-capped"],
  },
  *check(context) {
    const ofVehicle = context.parts
      .filter(
        (part): part is Connector =>
          part.kind === "connector" && part.belongsTo.side === "vehicle" && isCoupling(part),
      )
      .sort((a, b) => compareNames(a.designation, b.designation));
    for (const part of [...ofVehicle, ...trailerSockets(context)]) {
      const points = pointsOf(context, part);
      const lamps = points.filter((point) => isRoadLamp(point) && !context.isAlone(point));
      if (!lamps.length) continue;
      const grounds = points.filter(isReturn).sort(byName);
      if (grounds.some((point) => leadsBack(context, point))) continue;
      yield {
        message: grounds.length
          ? `${sayPoints(context, grounds)} ${grounds.length === 1 ? "leads" : "lead"} nowhere, while the lamps of ${part.designation} are joined.`
          : `${part.designation} has lamps and no contact for their ground.`,
        consequence:
          "The current comes back through the ball and its grease: lamps flicker, light up that should be dark, or stay dark, and the bearing surfaces burn.",
        remedy:
          "Bring the coupling's ground contact to a stud of the vehicle's body by a lead as thick as all the lamps together need.",
        about: [{ part: part.id }, ...grounds.map((point) => point.at)],
      };
    }
  },
});

function isReturn({ means }: Point): boolean {
  return means.id === "ground" || means.id === "ground-lamps";
}

/** On the trailer's side of the coupling: to a ground; on the vehicle's: to whatever hangs behind it. */
function leadsBack(context: Context, point: Point): boolean {
  const circuit = context.circuitOf(point);
  if (point.direction === "gives")
    return (
      circuit.points.some(
        (other) => other !== point && (other.unit !== point.unit || other.part !== point.part),
      ) || circuit.circuit.loose.length > 0
    );
  return context.grounds.isLive(circuit) || circuit.circuit.loose.length > 0;
}
