import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { actsOn, isInput } from "../../shared/near.ts";
import { nameOf, sayGrounds, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "mute-lead-grounded",
    group: "control",
    severity: "fault",
    summary: "A mute lead rests open until something pulls it.",
    source:
      "workshop manuals of audio units with a mute input (four agree); the pattern: common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
    brings: ["one-lead-two-jobs"],
  },
  *check(context) {
    for (const point of context.withFunction("mute")) {
      if (!isInput(context, point) || actsOn(point) !== "ground") continue;
      const circuit = context.circuitOf(point);
      const steady = context.grounds
        .feeds(circuit)
        .find(({ unattended }) => unattended.includes("accessory") || unattended.includes("run"));
      if (!steady || !context.grounds.unattendedAt(circuit).length) continue;
      yield {
        message: `${sayPoint(context, point)} lies on ground for good, at ${sayGrounds(context, [steady.source])}.`,
        consequence:
          "The unit stays silent, or barely whispers, although everything else about it is healthy.",
        remedy: `Part ${nameOf(point)} from ground. Where no telephone or other device uses it, cap its lead.`,
        about: [point.at],
      };
    }
  },
});
