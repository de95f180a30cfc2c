/** Where circles lie, in a frame of their own: centres and radii, one index a circle. Arrays are shared, not copied. */
export type Layout = {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly r: Float64Array;
};

/** Radius around the origin that holds every circle of a layout. */
export function reach({ x, y, r }: Layout): number {
  let most = 0;
  for (let i = 0; i < r.length; i++) most = Math.max(most, Math.hypot(x[i]!, y[i]!) + r[i]!);
  return most;
}

/**
 * Spreads (or draws in) the centres about the origin until the closest pair just touches. What comes out is a packing
 * that could be laid on a table, however roughly the search before it ended.
 */
export function settle(layout: Layout): Layout {
  const { x, y, r } = layout;
  let scale = 0;
  for (let i = 0; i < r.length; i++) {
    for (let j = 0; j < i; j++) {
      const dx = x[i]! - x[j]!;
      const dy = y[i]! - y[j]!;
      const sum = r[i]! + r[j]!;
      const square = dx * dx + dy * dy;
      // Square first: the root is only for the few pairs that press hardest.
      if (sum * sum > scale * scale * square) scale = sum / Math.sqrt(square);
    }
  }
  if (scale === 0 || !Number.isFinite(scale)) return layout;
  return { x: x.map((one) => one * scale), y: y.map((one) => one * scale), r };
}
