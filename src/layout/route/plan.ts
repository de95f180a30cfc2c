import { boxIsFree, type Field, freeSpans, nextLeft, nextRight } from "./field.ts";
import type { Anchor, Scene } from "./scene.ts";

/**
 * Finds a wire's way around the parts without a search: straight, one bend, two bends, or four bends through
 * a gap. Most wires of a harness need no more. Coordinates of the inner segments are only a first choice; the
 * lanes pass settles them.
 */
export type Planner = {
  readonly scene: Scene;
  /** How many wires were sent along a level gap, by its row; and along an upright channel, by its left edge. */
  readonly usedRows: Map<number, number>;
  readonly rows: Float64Array;
  readonly columns: Float64Array;
};

export function makePlanner(scene: Scene): Planner {
  const { zones } = scene;
  const distinct = (a: Float64Array, b: Float64Array) => Float64Array.from(new Set([...a, ...b])).sort();
  return {
    scene,
    usedRows: new Map(),
    rows: distinct(zones.y1, zones.y2),
    columns: distinct(zones.x1, zones.x2),
  };
}

/** @returns the whole path from contact to contact, or null when the search has to find one. */
export function planWire(planner: Planner, from: Anchor, to: Anchor): number[] | null {
  const { scene } = planner;
  let middle: number[] | null;
  if (from.dx !== 0 && to.dx !== 0) {
    middle = levelToLevel(
      planner,
      scene.zones,
      planner.rows,
      from.freeX,
      from.freeY,
      from.dx,
      to.freeX,
      to.freeY,
      to.dx,
    );
  } else if (from.dy !== 0 && to.dy !== 0) {
    middle = levelToLevel(
      planner,
      scene.zonesTurned,
      planner.columns,
      from.freeY,
      from.freeX,
      from.dy,
      to.freeY,
      to.freeX,
      to.dy,
    );
    if (middle) middle = swapped(middle);
  } else {
    const [level, upright] = from.dx !== 0 ? [from, to] : [to, from];
    middle = oneBend(scene.zones, level, upright) ?? overTheTop(planner, level, upright);
    if (middle && level === to) middle = backwards(middle);
  }
  if (!middle) return null;
  return [from.x, from.y, ...middle, to.x, to.y];
}

function swapped(points: number[]): number[] {
  const out: number[] = [];
  for (let i = 0; i < points.length; i += 2) out.push(points[i + 1]!, points[i]!);
  return out;
}

function backwards(points: number[]): number[] {
  const out: number[] = [];
  for (let k = points.length - 2; k >= 0; k -= 2) out.push(points[k]!, points[k + 1]!);
  return out;
}

/** A level end meets an upright end in one corner. */
function oneBend(field: Field, level: Anchor, upright: Anchor): number[] | null {
  const x = upright.freeX;
  const y = level.freeY;
  if ((x - level.freeX) * level.dx < 0 || (y - upright.freeY) * upright.dy < 0) return null;
  if (!boxIsFree(field, Math.min(level.freeX, x), y, Math.max(level.freeX, x), y)) return null;
  if (!boxIsFree(field, x, Math.min(y, upright.freeY), x, Math.max(y, upright.freeY))) return null;
  return [x, y];
}

/** How far before an upright end a wire may turn into its line. */
const APPROACH = 16;

/** Up or down, along a row just before the upright end, and into it. */
function overTheTop(planner: Planner, level: Anchor, upright: Anchor): number[] | null {
  const { zones, zonesTurned } = planner.scene;
  const { freeX: x, freeY: y, dy } = upright;
  const next = dy < 0 ? nextLeft(zonesTurned, y, x, x) : nextRight(zonesTurned, y, x, x);
  const row = y + (dy * Math.min(APPROACH, Math.abs(next - y))) / 2;
  const towards = x >= level.freeX ? -1 : 1;
  const middle = levelToLevel(
    planner,
    zones,
    planner.rows,
    level.freeX,
    level.freeY,
    level.dx,
    x,
    row,
    towards,
  );
  return middle && middle.length > 0 ? [...middle, x, row] : null;
}

/** How far a level line reaches from its free point before it meets a zone: [left, right]. */
function reachOf(field: Field, x: number, y: number, dx: number): [number, number] {
  return dx > 0 ? [x, nextRight(field, x, y, y)] : [nextLeft(field, x, y, y), x];
}

function levelToLevel(
  planner: Planner,
  field: Field,
  rows: Float64Array,
  ax: number,
  ay: number,
  adx: number,
  bx: number,
  by: number,
  bdx: number,
): number[] | null {
  const [aLeft, aRight] = reachOf(field, ax, ay, adx);
  const [bLeft, bRight] = reachOf(field, bx, by, bdx);
  const left = Math.max(aLeft, bLeft);
  const right = Math.min(aRight, bRight);
  if (ay === by && adx !== bdx && (bx - ax) * adx >= 0 && left <= right) return [];
  const top = Math.min(ay, by);
  const bottom = Math.max(ay, by);
  if (left <= right && ay !== by) {
    const x = bestColumn(field, left, right, top, bottom);
    if (x !== null) return [x, ay, x, by];
  }
  return throughGap(planner, field, rows, ax, ay, [aLeft, aRight], bx, by, [bLeft, bRight]);
}

/** The widest free stretch near the ends, and a first place in it. */
function bestColumn(field: Field, left: number, right: number, top: number, bottom: number): number | null {
  const spans = freeSpans(field, left, right, top, bottom);
  let best = -1;
  let bestWidth = 2;
  for (let i = 0; i < spans.length; i += 2) {
    // An endless stretch is the outside of the drawing: only for want of another.
    const width = Math.min(spans[i + 1]! - spans[i]!, 1e6);
    const score = width > 1e5 ? 3 : width;
    if (score > bestWidth) {
      bestWidth = score;
      best = i;
    }
  }
  return best < 0 ? null : firstPlace(spans[best]!, spans[best + 1]!);
}

function firstPlace(low: number, high: number): number {
  if (low === Number.NEGATIVE_INFINITY) return high === Number.POSITIVE_INFINITY ? 0 : high;
  return high === Number.POSITIVE_INFINITY ? low : (low + high) / 2;
}

const ROWS_TRIED = 48;

/** Up or down, along a free row, up or down again: the way past a column of parts. */
function throughGap(
  planner: Planner,
  field: Field,
  rows: Float64Array,
  ax: number,
  ay: number,
  aReach: [number, number],
  bx: number,
  by: number,
  bReach: [number, number],
): number[] | null {
  const top = Math.min(ay, by);
  const bottom = Math.max(ay, by);
  let best: number[] | null = null;
  let bestCost = Number.POSITIVE_INFINITY;
  let up = firstAtLeast(rows, (top + bottom) / 2) - 1;
  let down = up + 1;
  const middle = (top + bottom) / 2;
  for (let tried = 0; tried < ROWS_TRIED && (up >= 0 || down < rows.length); tried++) {
    const goUp = down >= rows.length || (up >= 0 && middle - rows[up]! < rows[down]! - middle);
    const row = goUp ? rows[up--]! : rows[down++]!;
    if (row === ay || row === by) continue;
    const detour = 2 * (Math.max(0, top - row) + Math.max(0, row - bottom));
    const cost = detour + (planner.usedRows.get(row) ?? 0) * 24;
    if (detour >= bestCost) break;
    if (cost >= bestCost) continue;
    const first = nearestColumn(field, aReach, bx, ay, row);
    if (first === null) continue;
    const second = nearestColumn(field, bReach, ax, by, row);
    if (second === null) continue;
    if (!boxIsFree(field, Math.min(first, second), row, Math.max(first, second), row)) continue;
    bestCost = cost;
    best = [first, ay, first, row, second, row, second, by];
  }
  if (best) planner.usedRows.set(best[3]!, (planner.usedRows.get(best[3]!) ?? 0) + 1);
  return best;
}

/** The middle of the free stretch of `reach` that lies nearest to the other end. */
function nearestColumn(
  field: Field,
  reach: [number, number],
  towards: number,
  y: number,
  row: number,
): number | null {
  const spans = freeSpans(field, reach[0], reach[1], Math.min(y, row), Math.max(y, row));
  let best: number | null = null;
  let bestDistance = Number.POSITIVE_INFINITY;
  for (let i = 0; i < spans.length; i += 2) {
    if (spans[i + 1]! - spans[i]! < 2) continue;
    const distance = Math.max(0, spans[i]! - towards, towards - spans[i + 1]!);
    if (distance >= bestDistance) continue;
    bestDistance = distance;
    best = firstPlace(spans[i]!, spans[i + 1]!);
  }
  return best;
}

function firstAtLeast(sorted: Float64Array, value: number): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]! < value) low = middle + 1;
    else high = middle;
  }
  return low;
}
