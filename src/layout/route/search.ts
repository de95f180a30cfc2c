import type { Grid } from "./grid.ts";

/** The arrays that a search works in, grown when needed and shared by the searches of one call. */
export type Scratch = {
  cost: Float64Array;
  stamp: Int32Array;
  closed: Int32Array;
  from: Int32Array;
  round: number;
  heapKey: Float64Array;
  heapState: Int32Array;
};

export function makeScratch(): Scratch {
  return {
    cost: new Float64Array(0),
    stamp: new Int32Array(0),
    closed: new Int32Array(0),
    from: new Int32Array(0),
    round: 0,
    heapKey: new Float64Array(1024),
    heapState: new Int32Array(1024),
  };
}

/** A little more than the true distance, so that the search runs ahead instead of widening among equals. */
const EAGER = 1.0005;

/**
 * Cheapest way (A*) from one grid point to another, in edge prices plus a price for each bend. States are grid points
 * with the direction of arrival, level (0) or upright (1).
 * @returns x1, y1, x2, y2, … of start, bends and goal; or null when there is none.
 */
export function cheapestWay(
  grid: Grid,
  scratch: Scratch,
  start: number,
  startAxis: 0 | 1,
  goal: number,
  goalAxis: 0 | 1,
  bend: number,
): number[] | null {
  const { xs, ys, upright, level } = grid;
  const nx = xs.length;
  const ny = ys.length;
  const states = nx * ny * 2;
  if (scratch.cost.length < states) {
    scratch.cost = new Float64Array(states);
    scratch.stamp = new Int32Array(states);
    scratch.closed = new Int32Array(states);
    scratch.from = new Int32Array(states);
    scratch.round = 0;
  }
  const { cost, stamp, closed, from } = scratch;
  const round = ++scratch.round;
  const goalX = xs[goal % nx]!;
  const goalY = ys[Math.floor(goal / nx)]!;
  let size = 0;

  const push = (key: number, state: number) => {
    if (size === scratch.heapKey.length) {
      const keys = new Float64Array(size * 2);
      const held = new Int32Array(size * 2);
      keys.set(scratch.heapKey);
      held.set(scratch.heapState);
      scratch.heapKey = keys;
      scratch.heapState = held;
    }
    const keys = scratch.heapKey;
    const held = scratch.heapState;
    let k = size++;
    while (k > 0) {
      const up = (k - 1) >> 1;
      if (keys[up]! <= key) break;
      keys[k] = keys[up]!;
      held[k] = held[up]!;
      k = up;
    }
    keys[k] = key;
    held[k] = state;
  };
  const pop = (): number => {
    const keys = scratch.heapKey;
    const held = scratch.heapState;
    const top = held[0]!;
    const key = keys[--size]!;
    const state = held[size]!;
    let k = 0;
    for (;;) {
      let down = 2 * k + 1;
      if (down >= size) break;
      if (down + 1 < size && keys[down + 1]! < keys[down]!) down++;
      if (keys[down]! >= key) break;
      keys[k] = keys[down]!;
      held[k] = held[down]!;
      k = down;
    }
    keys[k] = key;
    held[k] = state;
    return top;
  };
  const reach = (i: number, j: number, axis: number, price: number, by: number) => {
    const state = (j * nx + i) * 2 + axis;
    if (stamp[state] === round && cost[state]! <= price) return;
    stamp[state] = round;
    cost[state] = price;
    from[state] = by;
    const awayX = Math.abs(xs[i]! - goalX);
    const awayY = Math.abs(ys[j]! - goalY);
    const offLine = axis === 0 ? awayY > 0 : awayX > 0;
    const bends = axis !== goalAxis ? 1 : offLine ? 2 : 0;
    push(price + (awayX + awayY) * EAGER + bends * bend, state);
  };

  reach(start % nx, Math.floor(start / nx), startAxis, 0, -1);
  const end = goal * 2 + goalAxis;
  while (size > 0) {
    const state = pop();
    const so = cost[state]!;
    if (state === end) return unwound(grid, from, end);
    const node = state >> 1;
    const axis = state & 1;
    const i = node % nx;
    const j = (node - i) / nx;
    // A state may be in the heap twice; the cheaper one closes it.
    if (closed[state] === round) continue;
    closed[state] = round;
    reach(i, j, 1 - axis, so + bend, state);
    if (axis === 0) {
      if (i + 1 < nx && level[node]! < Number.POSITIVE_INFINITY) reach(i + 1, j, 0, so + level[node]!, state);
      if (i > 0 && level[node - 1]! < Number.POSITIVE_INFINITY)
        reach(i - 1, j, 0, so + level[node - 1]!, state);
    } else {
      if (j + 1 < ny && upright[node]! < Number.POSITIVE_INFINITY)
        reach(i, j + 1, 1, so + upright[node]!, state);
      if (j > 0 && upright[node - nx]! < Number.POSITIVE_INFINITY) {
        reach(i, j - 1, 1, so + upright[node - nx]!, state);
      }
    }
  }
  return null;
}

function unwound(grid: Grid, from: Int32Array, end: number): number[] {
  const nx = grid.xs.length;
  const points: number[] = [];
  for (let state = end; state >= 0; state = from[state]!) {
    const node = state >> 1;
    points.push(grid.ys[Math.floor(node / nx)]!, grid.xs[node % nx]!);
  }
  return points.reverse();
}
