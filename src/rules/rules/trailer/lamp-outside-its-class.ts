import { digits } from "../../../electrical/figure.ts";
import type { Point } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { isRoadLamp } from "../../shared/trailer.ts";
import { zoneFrom } from "../../shared/zone.ts";
import { byName, nameOf, sayList, sayPoint } from "../../words.ts";

/** Watts of the bulb that each lamp is made for. @source common bulbs P21W, P21/5W, R5W, C5W; from memory */
const BULB_W: Readonly<Record<string, number>> = {
  "indicator-left": 21,
  "indicator-right": 21,
  "stop-turn-left": 21,
  "stop-turn-right": 21,
  "stop-lamp": 21,
  reverse: 21,
  "fog-rear": 21,
  "tail-left": 5,
  "tail-right": 5,
  "plate-lamp": 5,
};
/** Of the bulb's current: less is taken for a failed bulb, more than three of them for a fault. @source thresholds of our own */
const LEAST = 0.6;
const MOST = 3.3;

export default defineRule({
  meta: {
    id: "lamp-outside-its-class",
    group: "trailer",
    severity: "weak",
    summary: "A lamp on an output that a controller watches draws what the controller expects.",
    source: "owners' forum, a thread on reversing lamps (outputs are tuned for their kind of lamp)",
    reads: [...CIRCUITS, ...NAMES, "settings"],
    fixable: false,
  },
  *check(context) {
    const all = context.harness.settings.vehicle.lamps === "watched";
    for (const source of [...context.withFunction(...Object.keys(BULB_W))].sort(byName)) {
      const cavity = source.contact.cavity;
      if (source.direction !== "gives" || source.side !== "vehicle" || !cavity) continue;
      if (cavity.gives !== "watched" && !(all && cavity.gives === "unknown")) continue;
      const lamps = lampsOn(context, source);
      if (!lamps?.length) continue;
      const sum_A = lamps.reduce(
        (sum, { part }) => sum + (part.kind === "load" ? Number(part.current_A) : 0),
        0,
      );
      const bulb_A = BULB_W[source.means.id]! / context.harness.settings.systemVoltage_V;
      if (sum_A >= LEAST * bulb_A - 1e-9 && sum_A <= MOST * bulb_A + 1e-9) continue;
      const isLess = sum_A < bulb_A;
      yield {
        message: `${sayList(lamps.map(nameOf))} ${lamps.length === 1 ? "draws" : "draw"} ${digits(sum_A, 2)} A from ${sayPoint(context, source)}, which is watched; a bulb of ${BULB_W[source.means.id]} W draws ${digits(bulb_A, 2)} A.`,
        consequence: isLess
          ? "The controller takes the lamp for a failed bulb: a message, a fast indicator, or the output is turned off."
          : "The controller takes the load for a short: a message, or the output is turned off.",
        remedy: isLess
          ? "Have the controller coded for this lamp, or use the adapter that the lamp's maker offers. A bare resistor grows hot enough to melt what it lies on."
          : "Feed the lamps by a relay or a bypass module that the output only drives.",
        about: [source.at, ...lamps.map((point) => point.at)],
      };
    }
  },
});

/** The lamps of that output's own kind that hang on it; `null` where not all of it can be known. */
function lampsOn(context: Context, source: Point): readonly Point[] | null {
  const points = zoneFrom(context, context.circuitOf(source).circuit.id).flatMap(
    (id) => context.points.circuits[id]!.points,
  );
  const lamps = points.filter(
    ({ part, contact, means }) =>
      part.kind === "load" && part.type === "lamp" && contact.number === 1 && means === source.means,
  );
  if (lamps.some(({ part }) => part.kind === "load" && part.current_A === "unknown")) return null;
  // Other boxes beside them, a trailer or a resistor that makes up for the difference.
  const others = points.some(
    (point) =>
      point !== source &&
      !lamps.includes(point) &&
      (point.part.kind === "resistor" || (point.contact.cavity !== null && isRoadLamp(point))),
  );
  return others ? null : [...lamps].sort(byName);
}
