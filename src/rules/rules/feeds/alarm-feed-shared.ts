import type { Point } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { sayGuard } from "../../shared/stretches.ts";
import { byName, nameOf, sayPoint, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "alarm-feed-shared",
    group: "feeds",
    severity: "weak",
    summary: "An alarm's feed has a fuse of its own, and nothing else behind it.",
    source: "hints of a fitters' training programme (MECP), as quoted in an alarm maker's manual",
    reads: [...CIRCUITS, ...NAMES, "sizes"],
    fixable: false,
  },
  *check(context) {
    for (const [unit, points] of alarms(context)) {
      for (const feed of points
        .filter(({ direction, means }) => direction === "takes" && means.id === "constant-feed")
        .sort(byName)) {
        for (const stretch of context.stretches.at(context.circuitOf(feed).circuit.id)) {
          if (stretch.guard.kind !== "fuse" && stretch.guard.kind !== "behind") continue;
          const others = stretch.circuits
            .flatMap((id) => context.points.circuits[id]!.points)
            .filter((point) => isOther(point, unit))
            .sort(byName);
          if (!others.length) continue;
          yield {
            message: `${sayPoint(context, feed)} of an alarm shares ${sayGuard(stretch, nameOf)} with ${sayPoints(context, others)}.`,
            consequence: "When a fault of one of the others blows it, the alarm is silent.",
            remedy: "Give the alarm a branch and a fuse of its own, straight from the supply.",
            about: [feed.at, ...others.map(({ at }) => at)],
          };
        }
      }
    }
  },
});

const ALARM: ReadonlySet<string> = new Set(["alarm-siren", "alarm-led"]);

/** Boxes that drive a siren or an alarm's lamp. */
function alarms(context: Context): readonly (readonly [string, readonly Point[]])[] {
  const units = new Set(
    context
      .withFunction(...ALARM)
      .filter(({ direction, part }) => direction === "gives" && part.kind !== "load")
      .map(({ unit }) => unit),
  );
  return [...context.points.byUnit].filter(([id]) => units.has(id));
}

/** Draws from the feed, and is no part of the alarm. */
function isOther(point: Point, unit: string): boolean {
  if (point.direction !== "takes" || point.unit === unit || ALARM.has(point.means.id)) return false;
  if (point.means.group === "ground" || point.means.group === "none") return false;
  return point.part.kind === "load" || (point.contact.cavity !== null && point.side !== "vehicle");
}
