import type { PathCommand } from "../layout/drawing.ts";

type Point = { readonly x: number; readonly y: number };
/** A straight piece of a wire's route. */
export type Piece = {
  readonly a: Point;
  readonly b: Point;
  readonly length: number;
  readonly level: boolean;
};

export function pointsOf(path: readonly number[]): Point[] {
  const points: Point[] = [];
  for (let i = 0; i + 1 < path.length; i += 2) points.push({ x: path[i]!, y: path[i + 1]! });
  return points;
}

/** The straight pieces of a route, those of no length left out. */
export function piecesOf(points: readonly Point[]): Piece[] {
  const pieces: Piece[] = [];
  for (let i = 0; i + 1 < points.length; i++) {
    const [a, b] = [points[i]!, points[i + 1]!];
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    if (length > 0) pieces.push({ a, b, length, level: a.y === b.y });
  }
  return pieces;
}

/** The route with its bends rounded, as a wire bends. */
export function rounded(points: readonly Point[], radius: number): PathCommand[] {
  const [start] = points;
  if (!start) return [];
  const commands: PathCommand[] = [["M", start.x, start.y]];
  for (let i = 1; i < points.length; i++) {
    const [before, at, after] = [points[i - 1]!, points[i]!, points[i + 1]];
    if (!after) {
      commands.push(["L", at.x, at.y]);
      break;
    }
    const into = Math.hypot(at.x - before.x, at.y - before.y);
    const out = Math.hypot(after.x - at.x, after.y - at.y);
    const cut = Math.min(radius, into / 2, out / 2);
    if (cut <= 0) {
      commands.push(["L", at.x, at.y]);
      continue;
    }
    const from = { x: at.x - ((at.x - before.x) / into) * cut, y: at.y - ((at.y - before.y) / into) * cut };
    const to = { x: at.x + ((after.x - at.x) / out) * cut, y: at.y + ((after.y - at.y) / out) * cut };
    // A quarter circle by a cubic: control points at 0.5523 of the radius from the ends.
    const k = 0.5523;
    commands.push(
      ["L", from.x, from.y],
      [
        "C",
        from.x + (at.x - from.x) * k,
        from.y + (at.y - from.y) * k,
        to.x + (at.x - to.x) * k,
        to.y + (at.y - to.y) * k,
        to.x,
        to.y,
      ],
    );
  }
  return commands;
}

/**
 * Slanted stripes across a wire, evenly spaced along its straight pieces: how a spiral tracer shows.
 * @param width of the insulation
 * @returns closed shapes to fill
 */
export function tracerStripes(pieces: readonly Piece[], width: number): PathCommand[] {
  const commands: PathCommand[] = [];
  const [long, slant, step] = [3.6, width * 0.9, 13];
  for (const { a, b, length } of pieces) {
    const [ux, uy] = [(b.x - a.x) / length, (b.y - a.y) / length];
    const [nx, ny] = [-uy * (width / 2), ux * (width / 2)];
    const room = length - 6 - slant - long;
    const count = Math.floor(room / step);
    if (room < 0) continue;
    const start = 3 + (room - count * step) / 2;
    for (let i = 0; i <= count; i++) {
      const at = start + i * step;
      const point = (along: number, side: number): [number, number] => [
        a.x + ux * along + nx * side,
        a.y + uy * along + ny * side,
      ];
      commands.push(
        ["M", ...point(at, -1)],
        ["L", ...point(at + long, -1)],
        ["L", ...point(at + long + slant, 1)],
        ["L", ...point(at + slant, 1)],
        ["Z"],
      );
    }
  }
  return commands;
}
