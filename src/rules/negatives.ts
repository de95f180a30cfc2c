import type { Point } from "../electrical/points.ts";
import type { Context } from "./context.ts";

/** The battery's minus, or a ground of which it is said that it is the battery's post. */
export function isPostPoint({ part, contact }: Point): boolean {
  return (
    (part.kind === "supply" && contact.number === 2) ||
    (part.kind === "ground" && part.serves === "battery-post")
  );
}

/** Whether a circuit, by its id, ends on the battery's negative post and on nothing of the body. */
export function isPost(context: Context, circuit: number): boolean {
  const { points } = context.points.circuits[circuit]!;
  return (
    points.some(isPostPoint) && !points.some((point) => point.part.kind === "ground" && !isPostPoint(point))
  );
}
