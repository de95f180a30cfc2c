import type { ReachState } from "../../../electrical/reach.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { actsOn } from "../../shared/near.ts";
import { nameOf, sayFeed, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "illumination-on-steady-feed",
    group: "control",
    severity: "weak",
    summary: "An illumination lead is live only with the lights on.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
    brings: ["one-lead-two-jobs"],
  },
  *check(context) {
    for (const point of context.withFunction("illumination")) {
      if (point.direction !== "takes" || !point.contact.cavity || actsOn(point) !== "volts") continue;
      const circuit = context.circuitOf(point);
      const steady = context.feeds
        .feeds(circuit)
        .find((feed) => feed.unattended.some((state) => STEADY.has(state)));
      if (!steady) continue;
      yield {
        message: `${sayPoint(context, point)} is live with the lights off: it is fed from ${sayFeed(context, steady)}.`,
        consequence: "The screen stays in its night setting, too dim by day, or its lamps never go out.",
        remedy: `Take ${nameOf(point)} to a lead that is live only with the lights on, or cap it and let the screen keep its own time.`,
        about: [point.at],
      };
    }
  },
});

const STEADY: ReadonlySet<ReachState> = new Set(["off", "accessory", "run", "crank", "unit-on"]);
