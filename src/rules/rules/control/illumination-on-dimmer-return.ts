import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { givesVolts, isInput, pointsWithinFuses } from "../../shared/near.ts";
import { byName, nameOf, sayPoint, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "illumination-on-dimmer-return",
    group: "control",
    severity: "weak",
    summary:
      "An illumination lead that wants 12 V comes from a feed of the lamps, not from the lead that the dimmer grounds.",
    source: "a mechanic's answer on dash lamps that stay dark; the pattern: common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
  },
  *check(context) {
    const returns = context.withFunction("dimmer-return").filter((point) => point.direction === "gives");
    if (!returns.length) return;
    for (const point of [...context.withFunction("illumination")].sort(byName)) {
      if (!isInput(context, point) || point.contact.cavity?.actsOn === "ground") continue;
      const near = pointsWithinFuses(context, context.circuitOf(point));
      const dimmers = near.filter((other) => returns.includes(other));
      // With a live lead on the dimmer as well, a danger speaks.
      if (!dimmers.length || near.some(givesVolts)) continue;
      yield {
        message: `${sayPoint(context, point)} is joined to ${sayPoints(context, dimmers)}: that lead is the ground side of a dimmer, not a feed.`,
        consequence:
          "The screen's lamps stay dark or follow the dimmer the wrong way round, and a unit that lights its keys from this lead may pull the dash lamps along.",
        remedy: `Take ${nameOf(point)} to the feed of the parking or dash lamps, live only with the lights on; leave the dimmer's lead alone and cap it.`,
        about: [point.at, ...dimmers.sort(byName).map((other) => other.at)],
      };
    }
  },
});
