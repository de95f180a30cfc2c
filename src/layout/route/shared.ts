import { SAME_TRACK } from "./types.ts";

/** A path with what decides whether it may lie on another's track. */
export type Laid = { readonly circuit: number; readonly points: readonly number[] };

/** @returns pairs of indices a1, b1, a2, b2, … of paths of different circuits that share a track somewhere. */
export function sharedTracks(laid: readonly Laid[]): number[] {
  const pairs: number[] = [];
  collect(laid, 0, pairs);
  collect(laid, 1, pairs);
  return pairs;
}

function collect(laid: readonly Laid[], shift: 0 | 1, pairs: number[]): void {
  const at: number[] = [];
  const from: number[] = [];
  const to: number[] = [];
  const owner: number[] = [];
  for (let w = 0; w < laid.length; w++) {
    const { points } = laid[w]!;
    for (let k = 0; k + 3 < points.length; k += 2) {
      if (points[k + shift] !== points[k + 2 + shift]) continue;
      const a = points[k + 1 - shift]!;
      const b = points[k + 3 - shift]!;
      at.push(points[k + shift]!);
      from.push(Math.min(a, b));
      to.push(Math.max(a, b));
      owner.push(w);
    }
  }
  const order = Int32Array.from(at.keys()).sort((i, j) => at[i]! - at[j]! || i - j);
  for (let n = 0; n < order.length; n++) {
    const i = order[n]!;
    for (let m = n + 1; m < order.length; m++) {
      const j = order[m]!;
      if (at[j]! - at[i]! >= SAME_TRACK) break;
      if (owner[i] === owner[j] || from[i]! >= to[j]! || from[j]! >= to[i]!) continue;
      if (laid[owner[i]!]!.circuit !== laid[owner[j]!]!.circuit) pairs.push(owner[i]!, owner[j]!);
    }
  }
}

/** Whether a path of the given circuit would share a track with any of the others. */
export function sharesTrack(points: readonly number[], circuit: number, others: readonly Laid[]): boolean {
  return others.some(
    (other) => other.circuit !== circuit && sharedTracks([{ circuit, points }, other]).length > 0,
  );
}
