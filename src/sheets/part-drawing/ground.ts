import type { Ground } from "../../graph/harness.ts";
import type { Primitive } from "../../layout/drawing.ts";
import { SMALL_TEXT } from "../../layout/geometry/caption.ts";
import type { Shape } from "../../layout/geometry/shape.ts";
import { drawCaption } from "./caption.ts";
import { LEAD, landings, leadsIn } from "./leads.ts";
import { HEAVY, line, mirrored } from "./pen.ts";

/**
 * A ring on a stud of the body: the frame symbol, three slanted strokes hanging from a bar.
 * Shape: IEC 60617, frame or chassis (from memory).
 */
export function drawGround(part: Ground, shape: Shape, left: boolean): readonly Primitive[] {
  const heights = landings(shape, 1);
  const [first, last] = [heights[0] ?? 24, heights.at(-1) ?? 24];
  const x = 24;
  const bar = last + 9;
  const items: Primitive[] = [
    ...leadsIn(shape, 1, 0, x),
    line(x, first, x, bar, LEAD),
    line(x - 11, bar, x + 11, bar, HEAVY),
    ...[-10, 0, 10].map((at) => line(x + at, bar, x + at - 5, bar + 7, LEAD)),
  ];
  return [
    ...mirrored(items, shape.width, !left),
    ...drawCaption(part, shape.width, shape.height, SMALL_TEXT),
  ];
}
