/**
 * A grid of possible track lines with a price on every edge, and the cheapest way through it. Infinity closes
 * an edge. Used with few lines (the borders of zones) to find a way round parts, and with many (every few units)
 * to thread one wire between wires that already lie.
 */
export type Grid = {
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  /** Price of the edge from (i, j) to (i, j + 1), at j * xs.length + i. */
  readonly upright: Float32Array;
  /** Price of the edge from (i, j) to (i + 1, j). */
  readonly level: Float32Array;
};

export function makeGrid(xs: Float64Array, ys: Float64Array): Grid {
  const nx = xs.length;
  const ny = ys.length;
  const upright = new Float32Array(nx * ny);
  const level = new Float32Array(nx * ny);
  for (let j = 0; j < ny; j++) {
    const tall = j + 1 < ny ? ys[j + 1]! - ys[j]! : Number.POSITIVE_INFINITY;
    upright.fill(tall, j * nx, (j + 1) * nx);
    for (let i = 0; i < nx; i++)
      level[j * nx + i] = i + 1 < nx ? xs[i + 1]! - xs[i]! : Number.POSITIVE_INFINITY;
  }
  return { xs, ys, upright, level };
}

/** First index whose value is > limit. */
export function firstAbove(sorted: Float64Array, limit: number): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]! <= limit) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** First index whose value is ≥ limit. */
export function firstFrom(sorted: Float64Array, limit: number): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]! < limit) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Adds `rate` per unit of length to every edge that runs through the inside of a rectangle (Infinity closes it). */
export function priceArea(grid: Grid, x1: number, y1: number, x2: number, y2: number, rate: number): void {
  const { xs, ys, upright, level } = grid;
  const nx = xs.length;
  const i1 = firstAbove(xs, x1);
  const i2 = firstFrom(xs, x2);
  const j1 = firstAbove(ys, y1);
  const j2 = firstFrom(ys, y2);
  for (let j = j1; j < j2; j++) {
    for (let i = Math.max(0, i1 - 1); i < i2 && i + 1 < nx; i++) {
      level[j * nx + i] = level[j * nx + i]! + rate * (xs[i + 1]! - xs[i]!);
    }
  }
  for (let j = Math.max(0, j1 - 1); j < j2 && j + 1 < ys.length; j++) {
    const add = rate * (ys[j + 1]! - ys[j]!);
    for (let i = i1; i < i2; i++) upright[j * nx + i] = upright[j * nx + i]! + add;
  }
}

export type TrackPrices = {
  /** Closer than this, a parallel track is closed. */
  readonly closed: number;
  /** Closer than this, it costs `crowded` per unit of length at the closest. */
  readonly near: number;
  readonly crowded: number;
  readonly crossing: number;
};

/** Prices what another wire's segment does to the edges beside and across it. */
export function priceTrack(
  grid: Grid,
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  prices: TrackPrices,
): void {
  const { xs, ys } = grid;
  const nx = xs.length;
  if (x1 === x2)
    priceLine(xs, ys, grid.upright, 1, nx, grid.level, x1, Math.min(y1, y2), Math.max(y1, y2), prices);
  else priceLine(ys, xs, grid.level, nx, 1, grid.upright, y1, Math.min(x1, x2), Math.max(x1, x2), prices);
}

function priceLine(
  across: Float64Array,
  along: Float64Array,
  parallel: Float32Array,
  acrossStep: number,
  alongStep: number,
  crossed: Float32Array,
  at: number,
  from: number,
  to: number,
  prices: TrackPrices,
): void {
  const first = Math.max(0, firstAbove(along, from) - 1);
  const last = Math.min(firstFrom(along, to), along.length - 1);
  const a2 = firstFrom(across, at + prices.near);
  for (let a = firstAbove(across, at - prices.near); a < a2; a++) {
    const distance = Math.abs(across[a]! - at);
    const rate =
      distance < prices.closed ? Number.POSITIVE_INFINITY : prices.crowded * (1 - distance / prices.near);
    for (let s = first; s < last; s++) {
      const edge = a * acrossStep + s * alongStep;
      parallel[edge] = parallel[edge]! + rate * (along[s + 1]! - along[s]!);
    }
  }
  const edgeAcross = firstAbove(across, at) - 1;
  if (edgeAcross < 0 || edgeAcross + 1 >= across.length) return;
  const end = firstAbove(along, to);
  for (let s = firstFrom(along, from); s < end; s++) {
    const edge = edgeAcross * acrossStep + s * alongStep;
    crossed[edge] = crossed[edge]! + prices.crossing;
  }
}
