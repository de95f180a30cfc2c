import type { PlacedWire, Scene } from "../../layout/scene.ts";
import type { Box } from "../canvas/hit-model.ts";

/** A straight piece of a wire that nothing is written on. `at` is what both ends share, `from` is less than `to`. */
export type Piece = {
  readonly upright: boolean;
  readonly at: number;
  readonly from: number;
  readonly to: number;
  /** Whether the wire's path runs towards greater numbers along it. */
  readonly onward: boolean;
};

/** Bare wire that stays visible on each side of what is written in it. */
const BESIDE_LABEL = 7;
const LEAST = 12;

/** The pieces of a wire that no label stands in, longest first. */
export function freePieces({ path, labels }: Pick<PlacedWire, "path" | "labels">): readonly Piece[] {
  const pieces: Piece[] = [];
  for (let i = 0; i + 3 < path.length; i += 2) {
    const [x1, y1, x2, y2] = [path[i]!, path[i + 1]!, path[i + 2]!, path[i + 3]!];
    if (x1 !== x2 && y1 !== y2) continue;
    const upright = x1 === x2;
    const [a, b] = upright ? [y1, y2] : [x1, x2];
    let [from, to] = a < b ? [a, b] : [b, a];
    if (!upright) {
      for (const label of labels) {
        if (label.y !== y1 || label.x < from || label.x > to) continue;
        const half = label.width / 2 + BESIDE_LABEL;
        // Labels stand near the ends: what is free lies on the longer side.
        if (label.x - from < to - label.x) from = label.x + half;
        else to = label.x - half;
      }
    }
    if (to - from >= LEAST) pieces.push({ upright, at: upright ? x1 : y1, from, to, onward: a < b });
  }
  return pieces.sort((p, q) => q.to - q.from - (p.to - p.from));
}

type Line = { readonly at: number; readonly from: number; readonly to: number };

/** Where wires run, so that what is written in one hides no crossing of others. */
export class Crossings {
  private readonly upright: Line[] = [];
  private readonly level: Line[] = [];

  constructor(scene: Pick<Scene, "wires">) {
    for (const { path } of scene.wires.values()) {
      for (let i = 0; i + 3 < path.length; i += 2) {
        const [x1, y1, x2, y2] = [path[i]!, path[i + 1]!, path[i + 2]!, path[i + 3]!];
        if (x1 === x2) this.upright.push({ at: x1, from: Math.min(y1, y2), to: Math.max(y1, y2) });
        else if (y1 === y2) this.level.push({ at: y1, from: Math.min(x1, x2), to: Math.max(x1, x2) });
      }
    }
    for (const list of [this.upright, this.level]) list.sort((a, b) => a.at - b.at);
  }

  /** How many wires run straight across a piece between two points of it. */
  across({ upright, at }: Pick<Piece, "upright" | "at">, from: number, to: number): number {
    const lines = upright ? this.level : this.upright;
    let count = 0;
    for (let i = firstFrom(lines, from); i < lines.length && lines[i]!.at <= to; i++) {
      if (lines[i]!.from < at && lines[i]!.to > at) count++;
    }
    return count;
  }

  /** Whether no wire but the one of a piece lies in a box. */
  isClear({ upright, at }: Pick<Piece, "upright" | "at">, { x, y, width, height }: Box): boolean {
    const clear = (
      lines: readonly Line[],
      own: boolean,
      from: number,
      to: number,
      low: number,
      high: number,
    ) => {
      for (let i = firstFrom(lines, from); i < lines.length && lines[i]!.at <= to; i++) {
        const line = lines[i]!;
        if (line.from < high && line.to > low && !(own && line.at === at)) return false;
      }
      return true;
    };
    return (
      clear(this.upright, upright, x, x + width, y, y + height) &&
      clear(this.level, !upright, y, y + height, x, x + width)
    );
  }
}

function firstFrom(lines: readonly Line[], at: number): number {
  let [low, high] = [0, lines.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (lines[middle]!.at < at) low = middle + 1;
    else high = middle;
  }
  return low;
}

const CELL = 96;

/** Boxes already written in, so that no two figures lie on each other. */
export class Taken {
  private readonly cells = new Map<string, Box[]>();

  private *cellsOf({ x, y, width, height }: Box): Iterable<string> {
    for (let i = Math.floor(x / CELL); i <= Math.floor((x + width) / CELL); i++)
      for (let j = Math.floor(y / CELL); j <= Math.floor((y + height) / CELL); j++) yield `${i},${j}`;
  }

  isFree(box: Box): boolean {
    for (const cell of this.cellsOf(box))
      for (const other of this.cells.get(cell) ?? []) if (overlap(box, other)) return false;
    return true;
  }

  add(box: Box): void {
    for (const cell of this.cellsOf(box)) {
      const list = this.cells.get(cell);
      if (list) list.push(box);
      else this.cells.set(cell, [box]);
    }
  }
}

function overlap(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}
