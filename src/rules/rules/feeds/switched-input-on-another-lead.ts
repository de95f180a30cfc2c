import type { Point } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { switchedSources, wantedInputs } from "../../shared/unit-feeds.ts";
import { byName, nameOf, sayPoint, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "switched-input-on-another-lead",
    group: "feeds",
    severity: "fault",
    summary:
      "Where a vehicle gives no switched feed, a unit's switched input is not put on some other lead instead.",
    source: "FCS 1362:2010 §2.7: many vehicles no longer have a conventional ignition sense signal",
    reads: [...CIRCUITS, ...NAMES, "sizes"],
    fixable: false,
  },
  *check(context) {
    if (switchedSources(context).length) return;
    for (const { point, fed } of wantedInputs(context)) {
      if (point.means.id === "constant-feed" || fed === "constant" || fed === "switched") continue;
      const others = givers(context, point);
      if (!others.length) continue;
      const bus = context
        .withFunction("can-high", "second-can-high", "lin")
        .some(({ side }) => side === "vehicle");
      yield {
        message: `${sayPoint(context, point)} is joined to ${sayPoints(context, others)}, for the vehicle's charts show no switched feed.`,
        consequence: "The unit comes on with something that has nothing to do with it, or not at all.",
        remedy: `Take ${nameOf(point)} to ${
          bus
            ? "the accessory output of an interface module that reads the vehicle's data bus"
            : "a fused feed of the fuse box that comes with the key"
        }.`,
        about: [point.at, ...others.map(({ at }) => at)],
      };
    }
  },
});

/** What it is joined to that gives something else, through fuses and the like too. */
function givers(context: Context, point: Point): readonly Point[] {
  const circuit = context.circuitOf(point);
  const fed = context.feeds.feeds(circuit).map(({ source }) => source);
  const here = circuit.points.filter(
    (other) =>
      other.unit !== point.unit &&
      (other.direction === "gives" || other.direction === "both") &&
      other.means.group !== "ground" &&
      other.means.group !== "none",
  );
  return [...new Set([...fed, ...here])].filter(({ means }) => means.group !== "feed").sort(byName);
}
