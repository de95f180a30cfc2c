import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, type Found } from "../../rule.ts";
import { exchangeFix } from "../../shared/swap.ts";
import { type Input, unitFeeds } from "../../shared/unit-feeds.ts";
import { nameOf, sayFeed, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "feeds-swapped",
    group: "feeds",
    severity: "fault",
    summary: "A unit's constant input is live with the key off, and its switched input is not.",
    source:
      "ISO 10487 (constant feed in A4, switched in A7, exchanged on some vehicles as built; through summaries); otherwise common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
  },
  *check(context) {
    for (const { unit, constant, switched } of unitFeeds(context)) {
      // A person has said that the two are crossed on purpose.
      if (unit.module?.feedsCrossed) continue;
      const starved = constant.filter(({ fed }) => fed === "switched" || fed === "other");
      const awake = switched.filter(({ fed }) => fed === "constant");
      const [c, s] = [starved[0], awake[0]];
      if (c && s) {
        const single = starved.length === 1 && awake.length === 1;
        yield {
          message: `Constant and switched are swapped: ${sayInput(context, c)}; ${sayInput(context, s)}.`,
          consequence:
            "The clock, presets and pairings are lost each time the key is turned off, and the unit's main current runs through the vehicle's switched circuit.",
          remedy: `Exchange the leads of ${nameOf(c.point)} and ${nameOf(s.point)}.`,
          about: [...starved, ...awake].map(({ point }) => point.at),
          fix: single ? exchangeFix(context, c.point, s.point) : null,
        };
        continue;
      }
      const bothSwitched = switched.some(({ fed }) => fed === "switched");
      if (c && !(bothSwitched && c.fed === "switched")) yield halfStarved(context, starved);
      if (s && !constant.some(({ fed }) => fed === "constant")) yield halfAwake(context, awake);
    }
  },
});

function halfStarved(context: Context, inputs: readonly Input[]): Found {
  const [first] = inputs as [Input];
  return {
    message: `A constant input is on a switched lead: ${sayInput(context, first)}.`,
    consequence: "The clock, presets and pairings are lost each time the key is turned off.",
    remedy: `Take ${nameOf(first.point)} to a lead that is live with the key off.`,
    about: inputs.map(({ point }) => point.at),
  };
}

function halfAwake(context: Context, inputs: readonly Input[]): Found {
  const [first] = inputs as [Input];
  return {
    message: `A switched input is on a constant lead: ${sayInput(context, first)}.`,
    consequence: "The unit may never sleep, and the battery goes flat.",
    remedy: `Take ${nameOf(first.point)} to a lead that is live only with the key on.`,
    about: inputs.map(({ point }) => point.at),
  };
}

function sayInput(context: Context, { point }: Input): string {
  const feed = context.feeds.feeds(context.circuitOf(point))[0];
  return `${sayPoint(context, point)} is fed from ${feed ? sayFeed(context, feed) : "nothing"}`;
}
