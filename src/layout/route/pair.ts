import { boxIsFree, type Field } from "./field.ts";
import { tidy } from "./path.ts";
import type { Anchor } from "./scene.ts";
import { TRACK_SPACING, type WireToRoute } from "./types.ts";

/**
 * For every wire the one that leads it: the first wire of its pair between the same two parts; itself when it has no
 * pair or is the first.
 */
export function leaders(wires: readonly WireToRoute[]): Int32Array {
  const first = new Map<string, number>();
  return Int32Array.from(wires, (wire, w) => {
    if (wire.bond === undefined) return w;
    const blocks = [wire.from.block, wire.to.block].sort();
    const key = JSON.stringify([wire.bond, ...blocks]);
    const leader = first.get(key);
    if (leader !== undefined) return leader;
    first.set(key, w);
    return w;
  });
}

type Ends = readonly [Anchor, Anchor];

/** The leader's path from the mate's contacts, through the same strips and gaps; the lanes set the two apart later. */
export function sameWay(path: readonly number[], leader: Ends, mate: Ends, zones: Field): number[] | null {
  if (path.length < 6) return null;
  const points = withEnds([...path], leader, mate);
  // A segment of no length would be neither level nor upright.
  if (!points || tidy(points).length !== points.length) return null;
  const last = points.length - 2;
  const inner = [...points];
  const [from, to] = facing(leader, mate);
  inner[0] = from.freeX;
  inner[1] = from.freeY;
  inner[last] = to.freeX;
  inner[last + 1] = to.freeY;
  return everySegment(inner, (x1, y1, x2, y2) => boxIsFree(zones, x1, y1, x2, y2))
    ? inMateOrder(points, leader, mate)
    : null;
}

/** The two ways one spacing beside a path that already lies, on its left and on its right, joined to the mate's contacts. */
export function besides(path: readonly number[], leader: Ends, mate: Ends): number[][] {
  const out: number[][] = [];
  for (const side of [TRACK_SPACING, -TRACK_SPACING]) {
    const points = [...path];
    for (let k = 2; k + 5 < path.length; k += 2) {
      const dx = Math.sign(path[k + 2]! - path[k]!);
      const dy = Math.sign(path[k + 3]! - path[k + 1]!);
      if (dx === 0) {
        points[k] = path[k]! + dy * side;
        points[k + 2] = points[k]!;
      } else {
        points[k + 1] = path[k + 1]! - dx * side;
        points[k + 3] = points[k + 1]!;
      }
    }
    const joined = withEnds(points, leader, mate);
    if (joined) out.push(tidy(inMateOrder(joined, leader, mate)));
  }
  return out;
}

/** The mate's ends in the order of the leader's: a wire may be drawn from either side. */
function facing(leader: Ends, mate: Ends): Ends {
  return mate[0].block === leader[0].block && mate[0].dx === leader[0].dx && mate[0].dy === leader[0].dy
    ? mate
    : [mate[1], mate[0]];
}

function inMateOrder(points: number[], leader: Ends, mate: Ends): number[] {
  if (facing(leader, mate) === mate) return points;
  const out: number[] = [];
  for (let k = points.length - 2; k >= 0; k -= 2) out.push(points[k]!, points[k + 1]!);
  return out;
}

function withEnds(points: number[], leader: Ends, mate: Ends): number[] | null {
  const [from, to] = facing(leader, mate);
  if (from.dx !== leader[0].dx || from.dy !== leader[0].dy) return null;
  if (to.dx !== leader[1].dx || to.dy !== leader[1].dy) return null;
  const last = points.length - 2;
  points[0] = from.x;
  points[1] = from.y;
  points[last] = to.x;
  points[last + 1] = to.y;
  if (from.dx !== 0) points[3] = from.y;
  else points[2] = from.x;
  if (to.dx !== 0) points[last - 1] = to.y;
  else points[last - 2] = to.x;
  const upright = from.dx === 0;
  for (let k = 0; k < last; k += 2) {
    const isUpright = (k / 2) % 2 === 0 ? upright : !upright;
    if (points[k + (isUpright ? 0 : 1)] !== points[k + (isUpright ? 2 : 3)]) return null;
  }
  return points;
}

/** Whether the test holds for the box of every segment. */
export function everySegment(
  points: readonly number[],
  test: (x1: number, y1: number, x2: number, y2: number) => boolean,
): boolean {
  for (let k = 0; k + 3 < points.length; k += 2) {
    const x1 = Math.min(points[k]!, points[k + 2]!);
    const y1 = Math.min(points[k + 1]!, points[k + 3]!);
    if (!test(x1, y1, Math.max(points[k]!, points[k + 2]!), Math.max(points[k + 1]!, points[k + 3]!)))
      return false;
  }
  return true;
}
