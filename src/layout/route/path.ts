import type { Path } from "./types.ts";

/** Drops repeated points and bends that bend nothing. */
export function tidy(points: readonly number[]): number[] {
  const out: number[] = [];
  for (let i = 0; i < points.length; i += 2) {
    const x = points[i]!;
    const y = points[i + 1]!;
    let n = out.length;
    if (n >= 2 && out[n - 2] === x && out[n - 1] === y) continue;
    if (n >= 4) {
      const level = out[n - 3] === out[n - 1] && out[n - 1] === y;
      const upright = out[n - 4] === out[n - 2] && out[n - 2] === x;
      if (level || upright) {
        out.length = n - 2;
        n -= 2;
        if (out[n - 2] === x && out[n - 1] === y) continue;
      }
    }
    out.push(x, y);
  }
  return out;
}

/** Whether any segment of the path meets the inside of the box. */
export function meetsBox(path: Path, x1: number, y1: number, x2: number, y2: number): boolean {
  for (let i = 0; i + 3 < path.length; i += 2) {
    const ax = path[i]!;
    const ay = path[i + 1]!;
    const bx = path[i + 2]!;
    const by = path[i + 3]!;
    if (Math.min(ax, bx) < x2 && Math.max(ax, bx) > x1 && Math.min(ay, by) < y2 && Math.max(ay, by) > y1)
      return true;
  }
  return false;
}
