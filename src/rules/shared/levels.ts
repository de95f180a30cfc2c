import type { Point } from "../../electrical/points.ts";
import type { Context } from "../context.ts";
import { byName } from "../words.ts";

/** What gives sound at one level and what takes it at another, of two boxes, over all circuits that join them. */
export type Mismatch = { readonly from: readonly Point[]; readonly to: readonly Point[] };

/**
 * Pairs of boxes that are joined by copper from an output to an input of another level.
 * @param group what the inputs are for
 */
export function mismatches(
  context: Context,
  group: "line-level" | "speaker",
  isInput: (point: Point) => boolean,
  isOutput: (point: Point) => boolean,
): readonly Mismatch[] {
  const found = new Map<string, { from: Set<Point>; to: Set<Point> }>();
  for (const points of context.points.byFunction.values()) {
    if (points[0]!.means.group !== group) continue;
    for (const input of points) {
      if (!isInput(input)) continue;
      for (const output of context.circuitOf(input).points) {
        if (output.unit === input.unit || !isOutput(output)) continue;
        const name = `${output.unit ?? output.part.id} ${input.unit ?? input.part.id}`;
        const link = found.get(name) ?? { from: new Set(), to: new Set() };
        found.set(name, link);
        link.from.add(output);
        link.to.add(input);
      }
    }
  }
  return [...found.values()].map(({ from, to }) => ({
    from: [...from].sort(byName),
    to: [...to].sort(byName),
  }));
}

/** An input for line level: one that takes, or one of an amplifier of which the chart does not say. */
export function isLineInput(context: Context, point: Point): boolean {
  if (point.means.group !== "line-level") return false;
  if (point.direction === "takes") return true;
  return point.direction === "unknown" && context.moduleOf(point)?.role === "amplifier";
}
