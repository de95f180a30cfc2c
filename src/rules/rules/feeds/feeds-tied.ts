import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { SWITCHED } from "../../shared/unit-feeds.ts";
import { byName, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "feeds-tied",
    group: "feeds",
    severity: "danger",
    summary: "The constant feed of a vehicle never reaches its switched feed.",
    source: "common practice, no source; the consequence for the ignition: from memory",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
  },
  *check(context) {
    const circuits = new Set(
      context
        .withFunction(...SWITCHED)
        .filter((point) => point.direction === "gives")
        .map((point) => context.circuitOf(point)),
    );
    for (const circuit of circuits) {
      if (!context.feeds.unattendedAt(circuit).includes("off")) continue;
      // A fuse, a diode or a relay's rest contact from the constant side keeps the switched side awake as well.
      const constant = context.feeds
        .feeds(circuit)
        .filter(({ source, unattended }) => source.means.id === "constant-feed" && unattended.includes("off"))
        .map(({ source }) => source)
        .sort(byName);
      if (!constant.length) continue;
      const switched = circuit.points
        .filter((point) => point.direction === "gives" && SWITCHED.has(point.means.id))
        .sort(byName);
      const straight = constant.some((point) => circuit.points.includes(point));
      yield {
        message: straight
          ? `${sayPoints(context, constant)} and ${sayPoints(context, switched)} are tied together.`
          : `${sayPoints(context, constant)} feeds back into ${sayPoints(context, switched)}.`,
        consequence:
          "The switched side stays live with the key out: the battery goes flat, an engine may run on, and each circuit's fuse can be fed past by the other.",
        remedy:
          "Part them. Where one must help the other, use a relay, or a diode that conducts towards the unit.",
        about: [...constant, ...switched].map((point) => point.at),
      };
    }
  },
});
