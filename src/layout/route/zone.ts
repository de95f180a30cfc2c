import type { Field } from "./field.ts";
import { MARGIN, type Side, type WireToRoute } from "./types.ts";

/** Order of the four numbers kept for each block. Opposite sides are two apart. */
const SIDES: readonly Side[] = ["left", "top", "right", "bottom"];
/** A margin may shrink to this when something with labels stands close. */
const LEAST_MARGIN = 3;
/** A neighbour in front of less than this share of a side does not shorten the room of the whole side. */
const WIDE_SHARE = 0.4;

/**
 * How far each block's zone stands out on each side: room for the labels on the first stretch of its wires, and
 * a margin on sides without contacts. Where neighbours stand too close for both, margins give way first, then
 * labels share what there is.
 * @returns [blocks × 4], left, top, right, bottom
 */
export function zoneReach(
  wires: readonly WireToRoute[],
  indexOf: ReadonlyMap<string, number>,
  bodies: Field,
): Float64Array {
  const stubs = new Float64Array(bodies.count * 4);
  for (const wire of wires) {
    for (const end of [wire.from, wire.to]) {
      const block = indexOf.get(end.block);
      if (block === undefined) continue;
      const at = block * 4 + SIDES.indexOf(end.side);
      stubs[at] = Math.max(stubs[at]!, end.stub);
    }
  }
  const reach = stubs.map((stub) => Math.max(stub, MARGIN));
  const longest = reach.reduce((a, b) => Math.max(a, b), 0);
  const { x1, y1, x2, y2, byY1 } = bodies;
  const wished = Float64Array.from(reach);
  for (let n = 0; n < byY1.length; n++) {
    const i = byY1[n]!;
    for (let m = n + 1; m < byY1.length; m++) {
      const j = byY1[m]!;
      if (y1[j]! > y2[i]! + 2 * longest) break;
      const sharedX = Math.min(x2[i]!, x2[j]!) - Math.max(x1[i]!, x1[j]!);
      const sharedY = Math.min(y2[i]!, y2[j]!) - Math.max(y1[i]!, y1[j]!);
      if (sharedY > 0 && sharedX <= 0) {
        const [first, second] = x1[i]! < x1[j]! ? [i, j] : [j, i];
        const tall = y2[first]! - y1[first]!;
        share(
          reach,
          wished,
          stubs,
          first * 4 + 2,
          second * 4,
          -sharedX,
          sharedY,
          tall,
          y2[second]! - y1[second]!,
        );
      } else if (sharedX > 0 && sharedY <= 0) {
        const [upper, lower] = y1[i]! < y1[j]! ? [i, j] : [j, i];
        const wideU = x2[upper]! - x1[upper]!;
        share(
          reach,
          wished,
          stubs,
          upper * 4 + 3,
          lower * 4 + 1,
          -sharedY,
          sharedX,
          wideU,
          x2[lower]! - x1[lower]!,
        );
      }
    }
  }
  return reach;
}

/** Lets two sides that face each other across `distance` share it. */
function share(
  reach: Float64Array,
  wished: Float64Array,
  stubs: Float64Array,
  a: number,
  b: number,
  distance: number,
  shared: number,
  lengthA: number,
  lengthB: number,
): void {
  const wishA = wished[a]!;
  const wishB = wished[b]!;
  if (wishA + wishB <= distance) return;
  const leastA = Math.min(stubs[a]! > 0 ? wishA : LEAST_MARGIN, distance / 2);
  const leastB = Math.min(stubs[b]! > 0 ? wishB : LEAST_MARGIN, distance / 2);
  const newA = Math.max(leastA, Math.min(wishA, distance - wishB));
  const newB = Math.max(leastB, Math.min(wishB, distance - newA));
  if (stubs[a] === 0 || shared >= lengthA * WIDE_SHARE) reach[a] = Math.min(reach[a]!, newA);
  if (stubs[b] === 0 || shared >= lengthB * WIDE_SHARE) reach[b] = Math.min(reach[b]!, newB);
}
