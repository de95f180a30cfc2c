import type { Point } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { zoneFrom } from "../../shared/zone.ts";
import { byName, sayPoints } from "../../words.ts";

const COMBINED = ["stop-turn-left", "stop-turn-right"] as const;
const SEPARATE: ReadonlySet<string> = new Set([
  "stop-lamp",
  "stop-lamp-high",
  "indicator-left",
  "indicator-right",
]);

export default defineRule({
  meta: {
    id: "combined-and-separate-lamps",
    group: "trailer",
    severity: "fault",
    summary: "Between lamps that stop and turn in one, and lamps that do it apart, stands a converter.",
    source: "a towing retailer's expert answer on lamp converters",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
    brings: ["outputs-tied", "one-lead-two-jobs", "same-function-unjoined"],
  },
  *check(context) {
    const groups = new Map<string, Set<Point>>();
    for (const point of [...context.withFunction(...COMBINED)].sort(byName)) {
      const others = point.direction === "gives" ? ledTo(context, point) : ledFrom(context, point);
      for (const other of others) {
        const key = `${point.unit} ${other.unit}`;
        const group = groups.get(key) ?? new Set<Point>();
        group.add(point).add(other);
        groups.set(key, group);
      }
    }
    for (const group of groups.values()) {
      const combined = [...group].filter(({ means }) => !SEPARATE.has(means.id)).sort(byName);
      const separate = [...group].filter(({ means }) => SEPARATE.has(means.id)).sort(byName);
      yield {
        message: `${sayPoints(context, combined)} ${combined.length === 1 ? "is" : "are"} joined to ${sayPoints(context, separate)}, with no converter between.`,
        consequence:
          "The brake makes both sides shine like indicators, or an indicator goes out under the brake: those behind read a wrong signal.",
        remedy: "Put a converter between, made for these two systems, with its own fused feed.",
        about: [...combined, ...separate].map((point) => point.at),
      };
    }
  },
});

const isDirect = (context: Context, start: number): readonly number[] =>
  zoneFrom(context, start, (gate) => gate.kind === "fuse" || gate.kind === "through");

/** Separate lamps that a combined output lights. */
function ledTo(context: Context, point: Point): readonly Point[] {
  return isDirect(context, context.circuitOf(point).circuit.id)
    .flatMap((id) => context.points.circuits[id]!.points)
    .filter((other) => SEPARATE.has(other.means.id) && other.unit !== point.unit);
}

/** Separate outputs that light a combined lamp. */
function ledFrom(context: Context, point: Point): readonly Point[] {
  const { id } = context.circuitOf(point).circuit;
  return context
    .withFunction(...SEPARATE)
    .filter(
      (other) =>
        other.unit !== point.unit &&
        other.direction === "gives" &&
        isDirect(context, context.circuitOf(other).circuit.id).includes(id),
    );
}
