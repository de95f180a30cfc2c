import { defineRule } from "../rule.ts";
import { nameOf, sayPoint, sayPoints } from "../words.ts";

export default defineRule({
  meta: {
    id: "parking-brake-grounded",
    severity: "danger",
    summary: "A parking-brake lead is grounded by the vehicle's own switch and by nothing else.",
    source:
      "The lead keeps moving pictures out of the driver's sight: road law in most places, and every screen maker's instructions; the pattern: common practice, no source",
  },
  *check(context) {
    for (const point of context.withFunction("parking-brake")) {
      if (point.direction === "gives" || !point.contact.cavity) continue;
      const circuit = context.circuitOf(point);
      if (!context.grounds.unattendedAt(circuit).length) continue;
      const ground = context.grounds.feeds(circuit).find((feed) => feed.unattended.length)?.source;
      yield {
        message: `${sayPoint(context, point)} is grounded for good${
          ground ? ` at ${sayPoints(context, [ground])}` : ""
        }; no parking-brake switch stands between.`,
        consequence:
          "Moving pictures play in the driver's sight with the vehicle under way. That distracts, and it is against the law in most places.",
        remedy: `Take the ground off and join ${nameOf(point)} to the vehicle's parking-brake switch, as the screen's maker asks.`,
        about: [point.at],
      };
    }
  },
});
