import { makeCorridors, notePassage, stripsBetween } from "./corridor.ts";
import { findDetours } from "./detour.ts";
import { farWays } from "./far.ts";
import { boxIsFree } from "./field.ts";
import { type Draft, lanesOf, settle } from "./lane.ts";
import { orderChannels } from "./order.ts";
import { tidy } from "./path.ts";
import { makePlanner, planWire } from "./plan.ts";
import { type Anchor, prepare, type Scene } from "./scene.ts";
import { makeScratch } from "./search.ts";
import { type Laid, sharedTracks } from "./shared.ts";
import { spread } from "./spread.ts";
import { stillFits } from "./still-fits.ts";
import { launch, threadWire } from "./thread.ts";
import type { Path, Routed, RouteProblem } from "./types.ts";

/**
 * Routes the wires of a drawing at right angles round its parts.
 *
 * 1. Each wire finds its way round the parts alone (`plan`, `detour`); its contacts' rows are given, everything
 *    between may still shift.
 * 2. Segments that run side by side are put in the order with the fewest crossings and spread over the room
 *    that there is (`order`, `spread`), rows first, then columns.
 * 3. What still shares a track, or starts where parts stand too close, is laid wire by wire on a fine grid
 *    between all the others (`thread`).
 *
 * @returns a path for every wire. Paths in `problem.kept` that still fit are returned as they are (the same array).
 *   The same problem always gives the same paths.
 */
export function route(problem: RouteProblem): Routed {
  const { wires } = problem;
  const scene = prepare(problem);
  const numbers = new Map<string, number>();
  const numberOf = (kind: string, name: string) => {
    const key = `${kind}:${name}`;
    const known = numbers.get(key);
    if (known !== undefined) return known;
    numbers.set(key, numbers.size);
    return numbers.size - 1;
  };
  const circuits = wires.map((wire) => numberOf("circuit", wire.circuit));
  const bonds = wires.map((wire) => (wire.bond === undefined ? -1 : numberOf("bond", wire.bond)));
  const kept = stillFits(problem, scene, circuits);

  const drafts: Draft[] = [];
  const waiting: number[] = [];
  const planner = makePlanner(scene);
  const unplanned: number[] = [];
  const corridors = makeCorridors(scene.zones);
  const far: number[] = [];
  const near = (w: number) => {
    const [from, to] = scene.anchors[w]!;
    const points = planWire(planner, from, to);
    if (!points) {
      unplanned.push(w);
      return;
    }
    notePassage(corridors, points);
    add(w, tidy(points), false);
  };
  const add = (wire: number, points: number[], fixed: boolean) =>
    drafts.push({ wire, circuit: circuits[wire]!, bond: bonds[wire]!, points, fixed });
  for (let w = 0; w < wires.length; w++) {
    const path = kept[w];
    if (path) {
      notePassage(corridors, path);
      add(w, path as number[], true);
      continue;
    }
    const [from, to] = scene.anchors[w]!;
    if (from.tight || to.tight) {
      waiting.push(w);
      continue;
    }
    const isFar = stripsBetween(corridors, from, to) !== null && !straightAhead(scene, from, to);
    if (isFar) far.push(w);
    else near(w);
  }
  const ways = farWays(scene, corridors, far);
  for (let k = 0; k < far.length; k++) {
    const points = ways[k];
    if (points) add(far[k]!, points, false);
    else near(far[k]!);
  }
  const scratch = makeScratch();
  const detours = findDetours(scene, scratch, unplanned);
  for (let k = 0; k < unplanned.length; k++) {
    const points = detours[k];
    if (points) add(unplanned[k]!, points, false);
    else waiting.push(unplanned[k]!);
  }

  arrangeLanes(scene, drafts, false);
  arrangeLanes(scene, drafts, true);

  const failed = threadRest(scene, drafts, waiting, circuits, bonds);
  const paths = new Map<string, Path>();
  const byWire = new Map(drafts.map((draft) => [draft.wire, draft]));
  for (let w = 0; w < wires.length; w++) paths.set(wires[w]!.id, kept[w] ?? byWire.get(w)!.points);
  return { paths, failed: failed.sort((a, b) => a - b).map((w) => wires[w]!.id) };
}

/** Whether two ends look at each other along one free row. */
function straightAhead(scene: Scene, from: Anchor, to: Anchor): boolean {
  if (from.freeY !== to.freeY) return false;
  const left = Math.min(from.freeX, to.freeX);
  return boxIsFree(scene.zones, left, from.freeY, Math.max(from.freeX, to.freeX), from.freeY);
}

function arrangeLanes(scene: Scene, drafts: readonly Draft[], upright: boolean): void {
  for (const channel of orderChannels(lanesOf(scene, drafts, upright, !upright))) {
    spread(channel);
    for (const slot of channel.slots) {
      if (slot.fixed) continue;
      for (const lane of slot.lanes) settle(lane, upright);
    }
  }
}

/** Takes up what shares a track and lays it, with the wires that wait, one by one. @returns wires without a clean way. */
function threadRest(
  scene: Scene,
  drafts: Draft[],
  waiting: number[],
  circuits: readonly number[],
  bonds: readonly number[],
): number[] {
  const taken = new Set<number>();
  const stubs: (Laid & { readonly wire: number })[] = [];
  const reserve = (wire: number) => {
    for (const anchor of scene.anchors[wire]!) {
      const tip = launch(scene, anchor);
      stubs.push({ wire, circuit: circuits[wire]!, points: [anchor.x, anchor.y, tip.x, tip.y] });
    }
  };
  for (const wire of waiting) reserve(wire);
  const clashes = sharedTracks([...drafts, ...stubs]);
  const counts = new Map<number, number>();
  for (const d of clashes) counts.set(d, (counts.get(d) ?? 0) + 1);
  for (let k = 0; k < clashes.length; k += 2) {
    const a = clashes[k]!;
    const b = clashes[k + 1]!;
    if (taken.has(a) || taken.has(b)) continue;
    const free = [a, b].filter((d) => d < drafts.length && !drafts[d]!.fixed);
    if (free.length === 0) continue;
    free.sort((p, q) => counts.get(q)! - counts.get(p)! || p - q);
    taken.add(free[0]!);
  }
  for (const d of taken) reserve(drafts[d]!.wire);
  const rest = [...waiting, ...[...taken].map((d) => drafts[d]!.wire)].sort((a, b) => a - b);
  if (rest.length === 0) return [];
  const standing = drafts.filter((_, d) => !taken.has(d));
  drafts.length = 0;
  drafts.push(...standing);
  const scratch = makeScratch();
  const failed: number[] = [];
  const pending = new Set(rest);
  for (const wire of rest) {
    pending.delete(wire);
    const laid: Laid[] = [...drafts, ...stubs.filter((stub) => pending.has(stub.wire))];
    const [from, to] = scene.anchors[wire]!;
    const { points, clean } = threadWire(scene, scratch, from, to, circuits[wire]!, laid);
    if (!clean) failed.push(wire);
    drafts.push({ wire, circuit: circuits[wire]!, bond: bonds[wire]!, points, fixed: true });
  }
  return failed;
}
