import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { type Input, SWITCHED, unitFeeds } from "../../shared/unit-feeds.ts";
import { nameOf, sayList, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "both-feeds-one-kind",
    group: "feeds",
    severity: "fault",
    summary: "Of a unit's two feeds, one is constant and the other comes with the key.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
  },
  *check(context) {
    for (const { constant, switched } of unitFeeds(context)) {
      const kinds = new Set([...constant, ...switched].map(({ fed }) => fed));
      const [c, s] = [constant[0], switched[0]];
      const [kind] = kinds;
      if (!c || !s || kinds.size !== 1 || (kind !== "constant" && kind !== "switched")) continue;
      if (kind === "constant" && [c, s].some((input) => isTied(context, input))) continue;
      const inputs = [...constant, ...switched];
      const names = sayList(inputs.map(({ point }) => sayPoint(context, point)));
      const about = inputs.map(({ point }) => point.at);
      yield kind === "constant"
        ? {
            severity: "weak",
            message: `${names} are ${inputs.length > 2 ? "all" : "both"} on a constant feed.`,
            consequence: "The unit may never sleep: the battery is flat after days.",
            remedy: `Take ${nameOf(s.point)} to a fused lead that is live with the key at accessory. Where the vehicle has none, use the output of a data-bus interface, or a relay.`,
            about,
          }
        : {
            message: `${names} are ${inputs.length > 2 ? "all" : "both"} on a feed that goes with the key.`,
            consequence: "The clock, presets and pairings are lost each time the key is turned off.",
            remedy: `Take ${nameOf(c.point)} to a lead that is live with the key off.`,
            about,
          };
    }
  },
});

/** Where the vehicle's own constant and switched leads are tied together, the worse rule speaks. */
function isTied(context: Context, { point }: Input): boolean {
  return context.feeds
    .feeds(context.circuitOf(point))
    .some(
      ({ source }) =>
        SWITCHED.has(source.means.id) &&
        context.feeds.unattendedAt(context.circuitOf(source)).includes("off"),
    );
}
