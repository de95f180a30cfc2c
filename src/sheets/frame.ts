import type { Primitive } from "../layout/drawing.ts";
import { bottom, type Rect, right, type SheetFormat, units } from "./paper-size.ts";
import { box, HAIR, inkStroke, line, MIDDLE, words } from "./part-drawing/pen.ts";

/** Line of the frame and of the centring marks, 0.7 mm; of the grid, 0.35 mm (ISO 5457, from memory). */
const FRAME_LINE = units(0.7);
const GRID_LINE = units(0.35);
const GRID_BAND = units(5);
const GRID_FIELD = units(50);
/** How far a centring mark reaches into the sheet: less than the standard has, so that it meets no table. */
const CENTRING = units(3);
/** Grid letters: without I and O, which read as figures. */
const LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

/**
 * Border, centring marks and grid letters of a sheet: fields of 50 mm counted from the axes, figures along the top
 * and letters down the side, as ISO 5457 has them (from memory).
 */
export function drawFrame({ frame, small }: SheetFormat): readonly Primitive[] {
  const outer: Rect = {
    x: frame.x - GRID_BAND,
    y: frame.y - GRID_BAND,
    width: frame.width + 2 * GRID_BAND,
    height: frame.height + 2 * GRID_BAND,
  };
  const [middleX, middleY] = [frame.x + frame.width / 2, frame.y + frame.height / 2];
  const items: Primitive[] = [
    box(outer.x, outer.y, outer.width, outer.height, { stroke: inkStroke(HAIR) }),
    box(frame.x, frame.y, frame.width, frame.height, { stroke: inkStroke(FRAME_LINE) }),
    line(middleX, outer.y, middleX, frame.y + CENTRING, FRAME_LINE),
    line(middleX, bottom(outer), middleX, bottom(frame) - (small ? 0 : CENTRING), FRAME_LINE),
    line(outer.x, middleY, frame.x + CENTRING, middleY, FRAME_LINE),
    line(right(outer), middleY, right(frame) - CENTRING, middleY, FRAME_LINE),
  ];
  const across = fields(frame.x, right(frame));
  const down = fields(frame.y, bottom(frame));
  for (const [index, [from, to]] of across.entries()) {
    const bands = small ? [outer.y] : [outer.y, bottom(frame)];
    for (const top of bands) {
      items.push(...gridMark(String(index + 1), (from + to) / 2, top + GRID_BAND / 2));
      if (index > 0) items.push(line(from, top, from, top + GRID_BAND, GRID_LINE));
    }
  }
  for (const [index, [from, to]] of down.entries()) {
    const bands = small ? [right(frame)] : [outer.x, right(frame)];
    for (const left of bands) {
      items.push(...gridMark(letterOf(index), left + GRID_BAND / 2, (from + to) / 2));
      if (index > 0) items.push(line(left, from, left + GRID_BAND, from, GRID_LINE));
    }
  }
  return items;
}

function gridMark(text: string, x: number, y: number): Primitive[] {
  return words(x, y + 11 * MIDDLE, text, { size: 11, align: "middle", room: GRID_FIELD });
}

function letterOf(index: number): string {
  const letter = LETTERS[index % LETTERS.length]!;
  return index < LETTERS.length ? letter : letter + letter;
}

/** The fields of one side, counted from its middle; a rest that is too short for its mark joins its neighbour. */
export function fields(from: number, to: number): readonly (readonly [number, number])[] {
  const middle = (from + to) / 2;
  const least = GRID_FIELD * 0.3;
  const cuts: number[] = [];
  for (let at = middle; at - from > least; at -= GRID_FIELD) cuts.push(at);
  for (let at = middle + GRID_FIELD; to - at > least; at += GRID_FIELD) cuts.push(at);
  const edges = [from, ...cuts.sort((a, b) => a - b), to];
  return edges.slice(1).map((edge, index) => [edges[index]!, edge] as const);
}
