import type { Point } from "../../electrical/points.ts";
import type { Context, Unit } from "../context.ts";
import { byName } from "../words.ts";

/** Whether a contact takes what its box works on: a feed, or a camera's own supply. */
export function takesPower({ means, direction }: Pick<Point, "means" | "direction">): boolean {
  return direction === "takes" && (means.group === "feed" || means.id === "camera-power");
}

/** The feed inputs of a box. */
export function inputsOf({ points }: Unit): readonly Point[] {
  return points.filter(takesPower);
}

/** The ground leads of a box. */
export function returnsOf({ points }: Unit): readonly Point[] {
  return points.filter((point) => point.means.group === "ground" && point.direction !== "gives");
}

/** Feed inputs that lie on ground, and ground leads that are fed: the supply is reversed where there are both. */
export function reversedLeads(
  context: Context,
  inputs: readonly Point[],
  returns: readonly Point[],
): { readonly grounded: readonly Point[]; readonly fed: readonly Point[] } {
  const { feeds, grounds } = context;
  const isGrounded = (point: Point) => grounds.isLive(context.circuitOf(point));
  const isFed = (point: Point) => feeds.isLive(context.circuitOf(point));
  return {
    grounded: inputs.filter((point) => isGrounded(point) && !isFed(point)).sort(byName),
    fed: returns.filter((point) => isFed(point) && !isGrounded(point)).sort(byName),
  };
}
