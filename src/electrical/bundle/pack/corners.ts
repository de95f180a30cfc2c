import type { Layout } from "./layout.ts";

/**
 * Lays circles one by one, thick first, each into the corner nearest the middle: a place where it touches two that lie
 * already and overlaps none. Thin ones so find the gaps between thick ones.
 * @param radii thick to thin
 * @param start where the first circles lie: one in the middle, a pair, or three about the middle
 */
export function layInCorners(radii: Float64Array, start: 1 | 2 | 3): Layout {
  const n = radii.length;
  const x = new Float64Array(n);
  const y = new Float64Array(n);
  const placed = layStart(radii, x, y, Math.min(start, n));
  let corners: Corner[] = [];
  let radius = Number.NaN;
  for (let i = placed; i < n; i++) {
    const r = radii[i]!;
    if (r !== radius) {
      radius = r;
      corners = [];
      for (let a = 1; a < i; a++) {
        for (let b = 0; b < a; b++) addCorners(corners, x, y, radii, a, b, r, i);
      }
    }
    const best = takeNearest(corners);
    if (best) {
      x[i] = best.x;
      y[i] = best.y;
    } else {
      // Two circles always have a corner; one alone has its side.
      x[i] = radii[0]! + r;
    }
    corners = corners.filter((corner) => apart(corner.x, corner.y, r, x[i]!, y[i]!, r));
    for (let a = 0; a < i; a++) addCorners(corners, x, y, radii, i, a, r, i + 1);
  }
  return { x, y, r: radii };
}

type Corner = { readonly x: number; readonly y: number; readonly away: number };

/** Touching is allowed; this much of overlap is rounding. */
const ROUNDING = 1e-9;

function apart(x: number, y: number, r: number, otherX: number, otherY: number, otherR: number): boolean {
  const dx = x - otherX;
  const dy = y - otherY;
  const sum = (r + otherR) * (1 - ROUNDING);
  return dx * dx + dy * dy >= sum * sum;
}

function addCorners(
  corners: Corner[],
  x: Float64Array,
  y: Float64Array,
  radii: Float64Array,
  a: number,
  b: number,
  r: number,
  count: number,
): void {
  const dx = x[b]! - x[a]!;
  const dy = y[b]! - y[a]!;
  const toA = radii[a]! + r;
  const toB = radii[b]! + r;
  const square = dx * dx + dy * dy;
  if (square > (toA + toB) ** 2) return;
  const distance = Math.sqrt(square);
  const along = (square + toA * toA - toB * toB) / (2 * distance);
  const across = Math.sqrt(Math.max(0, toA * toA - along * along));
  for (const side of [across, -across]) {
    const cornerX = x[a]! + (dx * along - dy * side) / distance;
    const cornerY = y[a]! + (dy * along + dx * side) / distance;
    let free = true;
    for (let i = 0; free && i < count; i++) free = apart(cornerX, cornerY, r, x[i]!, y[i]!, radii[i]!);
    if (free) corners.push({ x: cornerX, y: cornerY, away: Math.hypot(cornerX, cornerY) });
  }
}

function takeNearest(corners: readonly Corner[]): Corner | null {
  let best: Corner | null = null;
  for (const corner of corners) if (!best || corner.away < best.away - ROUNDING) best = corner;
  return best;
}

/** One in the middle; two side by side about their common middle; three about the middle of their triangle. */
function layStart(radii: Float64Array, x: Float64Array, y: Float64Array, count: number): number {
  if (count < 2) return Math.min(1, radii.length);
  x[1] = radii[0]! + radii[1]!;
  if (count === 3) {
    const toA = radii[0]! + radii[2]!;
    const toB = radii[1]! + radii[2]!;
    x[2] = (x[1]! ** 2 + toA ** 2 - toB ** 2) / (2 * x[1]!);
    y[2] = Math.sqrt(Math.max(0, toA ** 2 - x[2]! ** 2));
  }
  let middleX = 0;
  let middleY = 0;
  for (let i = 0; i < count; i++) {
    middleX += x[i]! / count;
    middleY += y[i]! / count;
  }
  for (let i = 0; i < count; i++) {
    x[i]! -= middleX;
    y[i]! -= middleY;
  }
  return count;
}
