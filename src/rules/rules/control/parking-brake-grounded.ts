import type { ReachState } from "../../../electrical/reach.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { actsOn } from "../../shared/near.ts";
import { nameOf, sayGrounds, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "parking-brake-grounded",
    group: "control",
    severity: "danger",
    summary: "A parking-brake lead is grounded by the vehicle's own switch and by nothing else.",
    source:
      "The lead keeps moving pictures out of the driver's sight: road law in most places, and every screen maker's instructions; the pattern: common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
  },
  *check(context) {
    for (const point of context.withFunction("parking-brake")) {
      if (point.direction === "gives" || !point.contact.cavity || actsOn(point) !== "ground") continue;
      const circuit = context.circuitOf(point);
      // One that a relay grounds in reverse only is not grounded under way.
      if (!context.grounds.unattendedAt(circuit).some((state) => UNDER_WAY.has(state))) continue;
      const ground = context.grounds
        .feeds(circuit)
        .find((feed) => feed.unattended.some((state) => UNDER_WAY.has(state)))?.source;
      yield {
        message: `${sayPoint(context, point)} is grounded for good${
          ground ? ` at ${sayGrounds(context, [ground])}` : ""
        }; no parking-brake switch stands between.`,
        consequence:
          "Moving pictures play in the driver's sight with the vehicle under way. That distracts, and it is against the law in most places.",
        remedy: `Take the ground off and join ${nameOf(point)} to the vehicle's parking-brake switch, as the screen's maker asks.`,
        about: [point.at],
      };
    }
  },
});

const UNDER_WAY: ReadonlySet<ReachState> = new Set(["off", "accessory", "run", "lights-on", "unit-on"]);
