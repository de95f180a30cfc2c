import {
  type Corridors,
  forgetPassage,
  type Gap,
  notePassage,
  stripsBetween,
  wayAcross,
} from "./corridor.ts";
import { tidy } from "./path.ts";
import type { Scene } from "./scene.ts";

/** How often every far wire's choice is looked at again when all the others have made theirs. */
const SECOND_THOUGHTS = 1;

/**
 * Ways of the wires that pass a column of parts and so have a choice of strips and gaps: each takes what crosses least
 * of what is known, then thinks again.
 * @param wires  indices of wires with no tight end
 * @param followers  for the first wire of a pair, those that go with it
 * @returns for each, the whole path from contact to contact, or null when this way of choosing does not fit it
 */
export function farWays(
  scene: Scene,
  corridors: Corridors,
  wires: readonly number[],
  followers: ReadonlyMap<number, readonly number[]>,
): (number[] | null)[] {
  const paths: (number[] | null)[] = wires.map(() => null);
  const gaps: (Gap | null)[] = wires.map(() => null);
  for (let round = 0; round <= SECOND_THOUGHTS; round++) {
    for (let k = 0; k < wires.length; k++) {
      const wire = wires[k]!;
      const [from, to] = scene.anchors[wire]!;
      const ends = [wire, ...(followers.get(wire) ?? [])].map((w) => scene.anchors[w]!);
      const strips = stripsBetween(corridors, from, to);
      if (!strips) continue;
      const before = paths[k];
      if (before) forgetPassage(corridors, before);
      const gap = gaps[k];
      if (gap) gap.used -= ends.length;
      const way = wayAcross(corridors, scene.zones, ends, strips);
      if (!way) continue;
      if (from.freeX > to.freeX) turnRound(way.middle);
      const points = tidy([from.x, from.y, ...way.middle, to.x, to.y]);
      notePassage(corridors, points);
      paths[k] = points;
      gaps[k] = way.gap;
    }
  }
  return paths;
}

/** Turns a list of points round, in place. */
function turnRound(points: number[]): void {
  points.reverse();
  for (let k = 0; k < points.length; k += 2) [points[k], points[k + 1]] = [points[k + 1]!, points[k]!];
}
