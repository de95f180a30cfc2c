import { makeCorridors, notePassage, stripsBetween } from "./corridor.ts";
import { findDetours } from "./detour.ts";
import { farWays } from "./far.ts";
import { boxIsFree } from "./field.ts";
import type { Draft } from "./lane.ts";
import { sameWay } from "./pair.ts";
import { tidy } from "./path.ts";
import { makePlanner, planWire } from "./plan.ts";
import type { Anchor, Scene } from "./scene.ts";
import type { Scratch } from "./search.ts";
import type { Path } from "./types.ts";
import type { Wiring } from "./wiring.ts";

/**
 * Chooses each wire's way round the parts. Kept paths stand as they are.
 * @returns drafts, whose inner segments may still shift, and the wires that only the fine search can lay
 */
export function chooseWays(
  scene: Scene,
  scratch: Scratch,
  wiring: Wiring,
  kept: readonly (Path | null)[],
): { drafts: Draft[]; waiting: number[] } {
  const drafts: Draft[] = [];
  const planned = new Map<number, number[]>();
  const waiting: number[] = [];
  const unplanned: number[] = [];
  const far: number[] = [];
  const followers: number[] = [];
  const led = new Map<number, number[]>();
  const planner = makePlanner(scene);
  const corridors = makeCorridors(scene.zones);
  const add = (wire: number, points: number[], fixed: boolean) => {
    drafts.push({ wire, circuit: wiring.circuits[wire]!, bond: wiring.bonds[wire]!, points, fixed });
    if (!fixed) planned.set(wire, points);
  };
  const near = (wire: number): boolean => {
    const [from, to] = scene.anchors[wire]!;
    const points = planWire(planner, from, to);
    if (!points) return false;
    notePassage(corridors, points);
    add(wire, tidy(points), false);
    return true;
  };
  const enclosed = (wire: number) => scene.anchors[wire]!.some((anchor) => anchor.tight);

  for (let w = 0; w < kept.length; w++) {
    const path = kept[w];
    if (path) {
      notePassage(corridors, path);
      add(w, path as number[], true);
    } else if (enclosed(w)) waiting.push(w);
    else if (wiring.leaders[w] !== w) {
      followers.push(w);
      led.set(wiring.leaders[w]!, [...(led.get(wiring.leaders[w]!) ?? []), w]);
    } else if (hasChoice(scene, stripsBetween(corridors, ...scene.anchors[w]!), ...scene.anchors[w]!))
      far.push(w);
    else if (!near(w)) unplanned.push(w);
  }
  const ways = farWays(scene, corridors, far, led);
  for (let k = 0; k < far.length; k++) {
    const points = ways[k];
    if (points) add(far[k]!, points, false);
    else if (!near(far[k]!)) unplanned.push(far[k]!);
  }
  const detours = findDetours(scene, scratch, unplanned);
  for (let k = 0; k < unplanned.length; k++) {
    const points = detours[k];
    if (points) add(unplanned[k]!, points, false);
    else waiting.push(unplanned[k]!);
  }
  for (const wire of followers) {
    const leader = wiring.leaders[wire]!;
    const path = planned.get(leader);
    const points = path && sameWay(path, scene.anchors[leader]!, scene.anchors[wire]!, scene.zones);
    if (points) add(wire, points, false);
    else if (!near(wire)) waiting.push(wire);
  }
  return { drafts, waiting };
}

/** Whether there are several strips to choose from, and no free row straight across them. */
function hasChoice(scene: Scene, strips: [number, number] | null, from: Anchor, to: Anchor): boolean {
  if (!strips) return false;
  if (from.freeY !== to.freeY) return true;
  const left = Math.min(from.freeX, to.freeX);
  return !boxIsFree(scene.zones, left, from.freeY, Math.max(from.freeX, to.freeX), from.freeY);
}
