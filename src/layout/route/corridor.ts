import { type Field, nextLeft, nextRight } from "./field.ts";
import type { Anchor } from "./scene.ts";

/**
 * Upright strips that no part's zone enters, from the top of the drawing to the bottom: what lies between columns of
 * parts. A wire that passes a strip enters it in one row and leaves it in another, and two wires must cross in it
 * exactly when they enter in one order and leave in the other. So the crossings of a far wire's possible ways can be
 * counted before anything is drawn.
 */
export type Corridors = {
  readonly low: readonly number[];
  readonly high: readonly number[];
  /** For each strip, the rows in which the wires so far enter on its low side and leave on its high side. */
  readonly enter: readonly number[][];
  readonly leave: readonly number[][];
  readonly gaps: Map<number, Gap[]>;
};

/** Rows between two strips in which nothing stands in the way, and how many wires go there already. */
export type Gap = { readonly top: number; readonly bottom: number; used: number };

export function makeCorridors(zones: Field): Corridors {
  const low: number[] = [];
  const high: number[] = [];
  let reached = Number.NEGATIVE_INFINITY;
  for (const i of zones.byX1) {
    if (zones.x1[i]! > reached + 2 && reached > Number.NEGATIVE_INFINITY) {
      low.push(reached);
      high.push(zones.x1[i]!);
    }
    reached = Math.max(reached, zones.x2[i]!);
  }
  return { low, high, enter: low.map(() => []), leave: low.map(() => []), gaps: new Map() };
}

/** Counts a wire's path among those that pass the strips. */
export function notePassage(corridors: Corridors, points: readonly number[]): void {
  const { low, high, enter, leave } = corridors;
  for (let c = 0; c < low.length; c++) {
    const a = rowAt(points, low[c]!);
    const b = rowAt(points, high[c]!);
    if (a === null || b === null) continue;
    enter[c]!.push(a);
    leave[c]!.push(b);
  }
}

/** Takes a path that `notePassage` counted out of the count. */
export function forgetPassage(corridors: Corridors, points: readonly number[]): void {
  const { low, high, enter, leave } = corridors;
  for (let c = 0; c < low.length; c++) {
    const a = rowAt(points, low[c]!);
    const b = rowAt(points, high[c]!);
    if (a === null || b === null) continue;
    const entering = enter[c]!;
    const leaving = leave[c]!;
    for (let k = entering.length - 1; k >= 0; k--) {
      if (entering[k] !== a || leaving[k] !== b) continue;
      entering[k] = entering[entering.length - 1]!;
      leaving[k] = leaving[leaving.length - 1]!;
      entering.pop();
      leaving.pop();
      break;
    }
  }
}

/** The row in which a path first meets the upright line at x. */
function rowAt(points: readonly number[], x: number): number | null {
  for (let k = 0; k + 3 < points.length; k += 2) {
    if (points[k + 1] !== points[k + 3]) continue;
    if (Math.min(points[k]!, points[k + 2]!) <= x && Math.max(points[k]!, points[k + 2]!) >= x)
      return points[k + 1]!;
  }
  return null;
}

/** Strips between two ends that face each other: [first, last], or null when the wire has less than two to choose from. */
export function stripsBetween(corridors: Corridors, from: Anchor, to: Anchor): [number, number] | null {
  const [left, right] = from.freeX <= to.freeX ? [from, to] : [to, from];
  if (left.dx !== 1 || right.dx !== -1) return null;
  let first = 0;
  while (first < corridors.low.length && corridors.low[first]! < left.freeX) first++;
  let last = corridors.low.length - 1;
  while (last >= 0 && corridors.high[last]! > right.freeX) last--;
  return last > first ? [first, last] : null;
}

const CROSSING = 300;
const BENDS = 60;
const FULL = 60;
const TRACK = 8;
const GAPS_TRIED = 60;
/** How far above or below both ends a gap may lie. */
const DETOUR = 2000;

type Way = {
  readonly cost: number;
  readonly first: number;
  readonly second: number;
  readonly row: number;
  readonly gap: Gap | null;
};

/** The bends between the two free points, from left to right, and the gap that was counted as used. */
export type Across = { readonly middle: number[]; readonly gap: Gap | null };

/**
 * The way of a wire past one or more columns of parts with the least to cross: up or down in one strip, or in two
 * with a free row between.
 * @param wires  both ends of the wire, and of those that must be able to go the same way
 * @returns null when there is no such way
 */
export function wayAcross(
  corridors: Corridors,
  zones: Field,
  wires: readonly (readonly [Anchor, Anchor])[],
  strips: readonly [number, number],
): Across | null {
  const sides = wires.map(
    ([from, to]) => (from.freeX <= to.freeX ? [from, to] : [to, from]) as [Anchor, Anchor],
  );
  const [left, right] = sides[0]!;
  const a = left.freeY;
  const b = right.freeY;
  const { low, high } = corridors;
  const aReach = Math.min(...sides.map(([end]) => nextRight(zones, end.freeX, end.freeY, end.freeY)));
  const bReach = Math.max(...sides.map(([, end]) => nextLeft(zones, end.freeX, end.freeY, end.freeY)));
  if (aReach <= low[strips[0]]! || bReach >= high[strips[1]]!) return null;
  let aLast = strips[0];
  while (aLast < strips[1] && low[aLast + 1]! < aReach) aLast++;
  let bFirst = strips[1];
  while (bFirst > strips[0] && high[bFirst - 1]! > bReach) bFirst--;
  const ways: Way[] = [];
  const passing = (strip: number, enter: number, leave: number) => {
    const entering = corridors.enter[strip]!;
    const leaving = corridors.leave[strip]!;
    let count = 0;
    for (let k = 0; k < entering.length; k++) {
      if ((entering[k]! - enter) * (leaving[k]! - leave) < 0) count++;
    }
    return count;
  };
  const straight = (row: number, after: number, before: number) => {
    let count = 0;
    for (let s = after + 1; s < before; s++) count += passing(s, row, row);
    return count;
  };
  for (let s = bFirst; s <= aLast && a !== b; s++) {
    const cost = straight(a, strips[0] - 1, s) + passing(s, a, b) + straight(b, s, strips[1] + 1);
    ways.push({ cost: cost * CROSSING, first: s, second: s, row: b, gap: null });
  }
  for (let first = strips[0]; first <= aLast; first++) {
    for (let second = Math.max(bFirst, first + 1); second <= strips[1]; second++) {
      const outer = straight(a, strips[0] - 1, first) + straight(b, second, strips[1] + 1);
      for (const gap of nearGaps(gapsBetween(corridors, zones, first, second), a, b)) {
        const row = rowIn(gap, a, b);
        if (row === a || row === b) continue;
        const crossings =
          outer + passing(first, a, row) + straight(row, first, second) + passing(second, row, b);
        const detour = 2 * (Math.max(0, Math.min(a, b) - row) + Math.max(0, row - Math.max(a, b)));
        const full = Math.max(0, gap.used + wires.length + 1 - (gap.bottom - gap.top) / TRACK) * FULL;
        ways.push({ cost: crossings * CROSSING + detour + full + BENDS, first, second, row, gap });
      }
    }
  }
  let best: Way | null = null;
  for (const way of ways) if (!best || way.cost < best.cost) best = way;
  if (!best) return null;
  const x1 = (low[best.first]! + high[best.first]!) / 2;
  const x2 = (low[best.second]! + high[best.second]!) / 2;
  if (!best.gap) return { middle: [x1, a, x1, b], gap: null };
  best.gap.used += wires.length;
  return { middle: [x1, a, x1, best.row, x2, best.row, x2, b], gap: best.gap };
}

function rowIn(gap: Gap, a: number, b: number): number {
  if (gap.bottom - gap.top < 8 * TRACK) return (gap.top + gap.bottom) / 2;
  const middle = (a + b) / 2;
  return Math.max(gap.top + TRACK, Math.min(gap.bottom - TRACK, middle));
}

/** Free rows between two strips, from the top down; the first and last are endless. */
function gapsBetween(corridors: Corridors, zones: Field, first: number, second: number): Gap[] {
  const key = first * corridors.low.length + second;
  const known = corridors.gaps.get(key);
  if (known) return known;
  const gaps: Gap[] = [];
  let reached = Number.NEGATIVE_INFINITY;
  for (const i of zones.byY1) {
    if (zones.x1[i]! < corridors.high[first]! || zones.x2[i]! > corridors.low[second]!) continue;
    if (zones.y1[i]! > reached) gaps.push({ top: reached, bottom: zones.y1[i]!, used: 0 });
    reached = Math.max(reached, zones.y2[i]!);
  }
  gaps.push({ top: reached, bottom: Number.POSITIVE_INFINITY, used: 0 });
  corridors.gaps.set(key, gaps);
  return gaps;
}

/** The gaps between two rows and a few beyond, thinned out evenly when there are many. */
function nearGaps(gaps: readonly Gap[], a: number, b: number): Gap[] {
  const top = Math.min(a, b);
  const bottom = Math.max(a, b);
  const start = firstReaching(gaps, top - DETOUR);
  const end = firstReaching(gaps, bottom + DETOUR);
  const step = Math.max(1, (end - start) / GAPS_TRIED);
  const out: Gap[] = [];
  for (let k = start; k <= end; k += step) out.push(gaps[Math.floor(k)]!);
  return out;
}

function firstReaching(gaps: readonly Gap[], row: number): number {
  let low = 0;
  let high = gaps.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (gaps[middle]!.bottom < row) low = middle + 1;
    else high = middle;
  }
  return low;
}
