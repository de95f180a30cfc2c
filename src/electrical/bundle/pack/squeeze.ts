import { type Layout, reach, settle } from "./layout.ts";
import { Pairs } from "./pairs.ts";

/** Stiffness of the circles, soft to hard; the last leaves overlaps of about 1e-5 of a radius. */
const STIFFNESS = [1, 20, 400, 8_000, 160_000] as const;
/** Pairs of gradients that the search remembers. */
const MEMORY = 6;

/**
 * Draws circles together: makes the enclosing radius small against springs that keep circles apart and inside, in
 * steps of stiffness, by limited-memory BFGS over all centres and the radius at once.
 * @param stepsEach iterations for each stiffness
 * @returns a packing without overlap
 * @source Nocedal, Updating quasi-Newton matrices with limited storage, Mathematics of Computation 35 (1980)
 */
export function squeeze(layout: Layout, stepsEach: number, stiffness: readonly number[] = STIFFNESS): Layout {
  const n = layout.r.length;
  const unit = reach(layout);
  const r = layout.r.map((one) => one / unit);
  const at = new Float64Array(2 * n + 1);
  for (let i = 0; i < n; i++) {
    at[i] = layout.x[i]! / unit;
    at[n + i] = layout.y[i]! / unit;
  }
  at[2 * n] = 1;
  const pairs = new Pairs(r);
  for (const hardness of stiffness) minimise(at, r, pairs, hardness * n ** 0.5, stepsEach);
  const x = at.subarray(0, n).map((one) => one * unit);
  const y = at.subarray(n, 2 * n).map((one) => one * unit);
  return settle({ x, y, r: layout.r });
}

function minimise(at: Float64Array, r: Float64Array, pairs: Pairs, hardness: number, steps: number): void {
  const size = at.length;
  let gradient = new Float64Array(size);
  const next = new Float64Array(size);
  let nextGradient = new Float64Array(size);
  const way = new Float64Array(size);
  const moves: Float64Array[] = [];
  const turns: Float64Array[] = [];
  const curves: number[] = [];
  let value = energy(at, r, pairs, hardness, gradient);
  for (let step = 0; step < steps; step++) {
    direction(gradient, moves, turns, curves, way);
    let slope = dot(way, gradient);
    if (slope >= 0) {
      moves.length = turns.length = curves.length = 0;
      for (let i = 0; i < size; i++) way[i] = -gradient[i]!;
      slope = -dot(gradient, gradient);
    }
    if (slope > -1e-18) return;
    // Never further than a fifth of the bundle at once: the first step knows nothing of the curvature.
    let stride = Math.min(1, 0.2 / Math.max(...bounds(way)));
    let nextValue = Number.POSITIVE_INFINITY;
    for (let tries = 0; tries < 12; tries++) {
      for (let i = 0; i < size; i++) next[i] = at[i]! + stride * way[i]!;
      nextValue = energy(next, r, pairs, hardness, nextGradient);
      if (nextValue <= value + 1e-4 * stride * slope) break;
      stride *= 0.4;
    }
    if (nextValue >= value) return;
    const move = new Float64Array(size);
    const turn = new Float64Array(size);
    for (let i = 0; i < size; i++) {
      move[i] = next[i]! - at[i]!;
      turn[i] = nextGradient[i]! - gradient[i]!;
    }
    const curve = dot(move, turn);
    if (curve > 1e-14) {
      moves.push(move);
      turns.push(turn);
      curves.push(curve);
      if (moves.length > MEMORY) {
        moves.shift();
        turns.shift();
        curves.shift();
      }
    }
    at.set(next);
    [gradient, nextGradient] = [nextGradient, gradient];
    const gained = value - nextValue;
    value = nextValue;
    if (gained < 1e-9) return;
  }
}

function bounds(way: Float64Array): readonly [number, number] {
  let low = 0;
  let high = 1e-30;
  for (const one of way) {
    if (one > high) high = one;
    else if (one < low) low = one;
  }
  return [high, -low];
}

/** The two-loop recursion: minus the gradient, bent by what was learnt of the curvature. */
function direction(
  gradient: Float64Array,
  moves: readonly Float64Array[],
  turns: readonly Float64Array[],
  curves: readonly number[],
  way: Float64Array,
): void {
  for (let i = 0; i < way.length; i++) way[i] = -gradient[i]!;
  const shares: number[] = [];
  for (let k = moves.length - 1; k >= 0; k--) {
    const share = dot(moves[k]!, way) / curves[k]!;
    shares[k] = share;
    add(way, turns[k]!, -share);
  }
  const last = moves.length - 1;
  if (last >= 0) {
    const scale = curves[last]! / dot(turns[last]!, turns[last]!);
    for (let i = 0; i < way.length; i++) way[i]! *= scale;
  }
  for (let k = 0; k < moves.length; k++) {
    add(way, moves[k]!, shares[k]! - dot(turns[k]!, way) / curves[k]!);
  }
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}

function add(to: Float64Array, from: Float64Array, times: number): void {
  for (let i = 0; i < to.length; i++) to[i]! += from[i]! * times;
}

/** Radius plus springs; writes its gradient. */
function energy(
  at: Float64Array,
  r: Float64Array,
  pairs: Pairs,
  hardness: number,
  gradient: Float64Array,
): number {
  const n = r.length;
  const around = at[2 * n]!;
  gradient.fill(0);
  let springs = 0;
  let outward = 0;
  for (let i = 0; i < n; i++) {
    const x = at[i]!;
    const y = at[n + i]!;
    const room = around - r[i]!;
    const square = x * x + y * y;
    if (room > 0 && square <= room * room) continue;
    const away = Math.sqrt(square) || 1e-12;
    const over = away - room;
    springs += over * over;
    outward += over;
    gradient[i]! += (hardness * over * x) / away;
    gradient[n + i]! += (hardness * over * y) / away;
  }
  const { first, second, count } = pairs.near(at);
  for (let k = 0; k < count; k++) {
    const i = first[k]!;
    const j = second[k]!;
    const dx = at[i]! - at[j]!;
    const dy = at[n + i]! - at[n + j]!;
    const sum = r[i]! + r[j]!;
    const square = dx * dx + dy * dy;
    if (square >= sum * sum) continue;
    const distance = Math.sqrt(square) || 1e-12;
    const over = sum - distance;
    springs += over * over;
    const pull = (hardness * over) / distance;
    gradient[i]! -= pull * dx;
    gradient[j]! += pull * dx;
    gradient[n + i]! -= pull * dy;
    gradient[n + j]! += pull * dy;
  }
  gradient[2 * n] = 1 - hardness * outward;
  return around + 0.5 * hardness * springs;
}
