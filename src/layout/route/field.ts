/**
 * Rectangles that wires stay out of, sorted four ways so that "what lies next in this direction" ends at the
 * first hit. A rectangle's border is free to run along; only its inside is closed.
 */
export type Field = {
  readonly count: number;
  readonly x1: Float64Array;
  readonly y1: Float64Array;
  readonly x2: Float64Array;
  readonly y2: Float64Array;
  readonly byX1: Int32Array;
  readonly byX2: Int32Array;
  readonly byY1: Int32Array;
  readonly byY2: Int32Array;
  readonly maxWidth: number;
  readonly maxHeight: number;
};

export function makeField(x1: Float64Array, y1: Float64Array, x2: Float64Array, y2: Float64Array): Field {
  const count = x1.length;
  let maxWidth = 0;
  let maxHeight = 0;
  for (let i = 0; i < count; i++) {
    maxWidth = Math.max(maxWidth, x2[i]! - x1[i]!);
    maxHeight = Math.max(maxHeight, y2[i]! - y1[i]!);
  }
  const sorted = (key: Float64Array) =>
    Int32Array.from({ length: count }, (_, i) => i).sort((a, b) => key[a]! - key[b]! || a - b);
  return {
    count,
    x1,
    y1,
    x2,
    y2,
    byX1: sorted(x1),
    byX2: sorted(x2),
    byY1: sorted(y1),
    byY2: sorted(y2),
    maxWidth,
    maxHeight,
  };
}

/** The same field with x and y exchanged, sharing every array. */
export function transposed(field: Field): Field {
  return {
    count: field.count,
    x1: field.y1,
    y1: field.x1,
    x2: field.y2,
    y2: field.x2,
    byX1: field.byY1,
    byX2: field.byY2,
    byY1: field.byX1,
    byY2: field.byX2,
    maxWidth: field.maxHeight,
    maxHeight: field.maxWidth,
  };
}

/** First place in `order` whose key is ≥ value. */
function lowerBound(order: Int32Array, key: Float64Array, value: number): number {
  let low = 0;
  let high = order.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (key[order[middle]!]! < value) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Smallest left edge ≥ x among rectangles whose inside meets the rows (top, bottom); Infinity if none. */
export function nextRight(field: Field, x: number, top: number, bottom: number): number {
  const { byX1, x1, y1, y2 } = field;
  for (let k = lowerBound(byX1, x1, x); k < byX1.length; k++) {
    const i = byX1[k]!;
    if (y1[i]! < bottom && y2[i]! > top) return x1[i]!;
  }
  return Number.POSITIVE_INFINITY;
}

/** Largest right edge ≤ x among rectangles whose inside meets the rows (top, bottom); -Infinity if none. */
export function nextLeft(field: Field, x: number, top: number, bottom: number): number {
  const { byX2, x2, y1, y2 } = field;
  let k = lowerBound(byX2, x2, x);
  while (k < byX2.length && x2[byX2[k]!]! <= x) k++;
  for (k--; k >= 0; k--) {
    const i = byX2[k]!;
    if (y1[i]! < bottom && y2[i]! > top) return x2[i]!;
  }
  return Number.NEGATIVE_INFINITY;
}

/** Whether the open box meets the inside of any rectangle. A box without width or height counts as a line. */
export function boxIsFree(field: Field, left: number, top: number, right: number, bottom: number): boolean {
  const { x1, y1, x2, y2 } = field;
  if ((right - left) * field.count > 0 && right - left + field.maxWidth < bottom - top + field.maxHeight) {
    const { byX1 } = field;
    for (let k = lowerBound(byX1, x1, left - field.maxWidth); k < byX1.length; k++) {
      const i = byX1[k]!;
      if (x1[i]! >= right && x1[i]! > left) break;
      if (x1[i]! < right && x2[i]! > left && y1[i]! < bottom && y2[i]! > top) return false;
    }
    return true;
  }
  const { byY1 } = field;
  for (let k = lowerBound(byY1, y1, top - field.maxHeight); k < byY1.length; k++) {
    const i = byY1[k]!;
    if (y1[i]! >= bottom && y1[i]! > top) break;
    if (x1[i]! < right && x2[i]! > left && y1[i]! < bottom && y2[i]! > top) return false;
  }
  return true;
}

/** The stretches of [left, right] in which an upright line over the rows (top, bottom) hits nothing: a1, b1, a2, b2, … */
export function freeSpans(field: Field, left: number, right: number, top: number, bottom: number): number[] {
  const { byX1, x1, y1, x2, y2 } = field;
  const spans: number[] = [];
  let open = left;
  for (let k = lowerBound(byX1, x1, left - field.maxWidth); k < byX1.length; k++) {
    const i = byX1[k]!;
    if (x1[i]! >= right) break;
    if (x2[i]! <= open || y1[i]! >= bottom || y2[i]! <= top) continue;
    if (x1[i]! >= open) spans.push(open, x1[i]!);
    open = x2[i]!;
  }
  if (open <= right) spans.push(open, right);
  return spans;
}
