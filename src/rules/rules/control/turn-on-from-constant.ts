import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { isInput } from "../../shared/near.ts";
import { byName, nameOf, sayFeed, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "turn-on-from-constant",
    group: "control",
    severity: "weak",
    summary: "The turn-on lead of an amplifier or an antenna is dead with the key off.",
    source:
      "installation pages of the trade agree on it (flat by the next morning); the pattern: common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
    brings: ["one-lead-two-jobs"],
  },
  *check(context) {
    for (const point of [...context.withFunction("amplifier-turn-on", "antenna-power")].sort(byName)) {
      if (!isInput(context, point)) continue;
      const circuit = context.circuitOf(point);
      if (!context.feeds.unattendedAt(circuit).includes("off")) continue;
      const feed = context.feeds.feeds(circuit).find(({ unattended }) => unattended.includes("off"));
      if (!feed) continue;
      const isAmplifier = point.means.id === "amplifier-turn-on";
      yield {
        message: `${sayPoint(context, point)} is live with the key off: it is fed from ${sayFeed(context, feed)}.`,
        consequence: isAmplifier
          ? "The amplifier never sleeps, and the battery is flat by morning or after a few days."
          : "The antenna's amplifier never sleeps, or the mast never comes down, and the battery runs flat.",
        remedy: `Take ${nameOf(point)} to the ${point.means.name} lead of the source; where it has none, to a feed that comes with the key.`,
        about: [point.at],
      };
    }
  },
});
