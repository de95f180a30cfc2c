import type { Point } from "../../../electrical/points.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { zoneFrom } from "../../shared/zone.ts";
import { byName, sayList, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "supplies-joined",
    group: "feeds",
    severity: "danger",
    summary: "Two batteries are joined through a relay, a diode or a charger only.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES, "sizes"],
    fixable: false,
  },
  *check(context) {
    const posts = context.points.all.filter(
      ({ part, contact }) => part.kind === "supply" && contact.number === 1,
    );
    if (posts.length < 2) return;
    const told = new Set<Point>();
    for (const post of posts.sort(byName)) {
      if (told.has(post)) continue;
      // A fuse between them protects the lead, and joins them all the same.
      const zone = zoneFrom(context, context.circuitOf(post).circuit.id, (gate) => gate.kind === "fuse");
      const joined = posts.filter((other) => zone.includes(context.circuitOf(other).circuit.id));
      for (const one of joined) told.add(one);
      if (joined.length < 2) continue;
      const straight = joined.every((one) => context.circuitOf(one) === context.circuitOf(post));
      yield {
        message: `${sayPoints(context, joined)} are joined at all times${
          straight ? "" : ", with nothing between them but fuses"
        }.`,
        consequence:
          "The fuller battery discharges into the other, with as much current as the leads let through; and what one of them feeds stays live when the other is off.",
        remedy: `Join ${sayList(joined.map(({ part }) => part.designation))} through a split-charge relay, a diode or a charger, with a fuse at each of them.`,
        about: joined.map(({ at }) => at),
      };
    }
  },
});
