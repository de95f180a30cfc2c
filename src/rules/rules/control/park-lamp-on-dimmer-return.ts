import type { Point } from "../../../electrical/points.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { givesVolts, pointsWithinFuses } from "../../shared/near.ts";
import { byName, isOrAre, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "park-lamp-on-dimmer-return",
    group: "control",
    severity: "danger",
    summary: "A live lead never meets the return of a dimmer that works on the ground side.",
    source:
      "an owner's report and a mechanic's answer on leads tied behind a radio; the pattern: common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
    brings: ["outputs-tied", "illumination-on-steady-feed", "feeds-tied"],
  },
  *check(context) {
    const told = new Set<Point>();
    for (const dimmer of [...context.withFunction("dimmer-return")].sort(byName)) {
      if (dimmer.direction !== "gives" || told.has(dimmer)) continue;
      const near = pointsWithinFuses(context, context.circuitOf(dimmer));
      const live = near.filter(givesVolts).sort(byName);
      if (!live.length) continue;
      const dimmers = near.filter((point) => point.means === dimmer.means && point.direction === "gives");
      for (const point of dimmers) told.add(point);
      yield {
        message: `${sayPoints(context, live)} ${isOrAre(live)} tied to ${sayPoints(context, dimmers)}, which the dimmer grounds.`,
        consequence:
          "With the lights on, the fuse blows and the dash and tail lamps go dark at night; a dimmer turned low hides the short until somebody turns it up.",
        remedy:
          "Part them. Measure each lead with the lights on and off before it is joined: a feed rises to battery volts, a dimmer's return does not.",
        about: [...live, ...dimmers.sort(byName)].map((point) => point.at),
      };
    }
  },
});
