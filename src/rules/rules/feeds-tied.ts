import { defineRule } from "../rule.ts";
import { byName, sayPoints } from "../words.ts";

export default defineRule({
  meta: {
    id: "feeds-tied",
    severity: "danger",
    summary: "The constant and the switched feed of a vehicle are never joined by copper.",
    source: "common practice, no source; the consequence for the ignition: from memory",
  },
  *check(context) {
    for (const circuit of context.points.circuits) {
      if (circuit.points.length < 2) continue;
      const gives = circuit.points.filter((point) => point.direction === "gives");
      const constant = gives.filter((point) => point.means.id === "constant-feed").sort(byName);
      const switched = gives.filter((point) => SWITCHED.has(point.means.id)).sort(byName);
      if (!constant.length || !switched.length) continue;
      yield {
        message: `${sayPoints(context, constant)} and ${sayPoints(context, switched)} are tied together.`,
        consequence:
          "The switched side stays live with the key out: the battery goes flat, an engine may run on, and each circuit's fuse can be fed past by the other.",
        remedy:
          "Part them. Where one must help the other, use a relay, or a diode that conducts towards the unit.",
        about: [...constant, ...switched].map((point) => point.at),
      };
    }
  },
});

const SWITCHED = new Set(["switched-feed", "ignition-feed"]);
