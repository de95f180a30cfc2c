import type { Point } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { actsOn, isInput, pointsWithinFuses } from "../../shared/near.ts";
import { byName, isOrAre, nameOf, sayPoint, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "parking-brake-on-wrong-lead",
    group: "control",
    severity: "fault",
    summary: "A parking-brake lead is joined to the vehicle's parking-brake switch and to no other lead.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
    brings: ["one-lead-two-jobs", "same-function-unjoined"],
  },
  *check(context) {
    for (const point of [...context.withFunction("parking-brake")].sort(byName)) {
      if (!isInput(context, point)) continue;
      const wrong = wrongSources(context, point);
      if (!wrong.length) continue;
      yield {
        message: `${sayPoint(context, point)} is joined to ${sayPoints(context, wrong)}, which ${isOrAre(wrong)} no parking-brake switch.`,
        consequence:
          "The screen stays locked or unlocks at the wrong moment, and the other circuit may be fed back through the unit.",
        remedy: `Take ${nameOf(point)} to the lead of the parking-brake switch, which is grounded while the brake is set, as the screen's maker asks.`,
        about: [point.at, ...wrong.map((other) => other.at)],
      };
    }
  },
});

/** Whatever drives the lead and is neither the switch's own lead nor a ground, which a rule of its own tells. */
function wrongSources(context: Context, point: Point): readonly Point[] {
  const circuit = context.circuitOf(point);
  const found = new Set<Point>();
  for (const other of pointsWithinFuses(context, circuit)) {
    const drives = other.direction === "gives" || other.means.group === "data";
    if (!drives || other.unit === point.unit || isRight(other)) continue;
    found.add(other);
  }
  // A screen that wants volts gets them from a switch or a relay, and from no lead that is live by itself.
  if (actsOn(point) === "ground") {
    for (const { source, unattended } of context.feeds.feeds(circuit)) {
      if (unattended.length && !isRight(source)) found.add(source);
    }
  }
  return [...found].sort(byName);
}

function isRight({ means }: Point): boolean {
  return means.id === "parking-brake" || means.id === "unknown" || means.group === "ground";
}
