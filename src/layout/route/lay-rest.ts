import { boxIsFree } from "./field.ts";
import type { Draft } from "./lane.ts";
import { besides, everySegment } from "./pair.ts";
import type { Scene } from "./scene.ts";
import type { Scratch } from "./search.ts";
import { type Laid, sharedTracks, sharesTrack } from "./shared.ts";
import { launch, threadWire } from "./thread.ts";
import { MARGIN } from "./types.ts";
import type { Wiring } from "./wiring.ts";

type Stub = Laid & { readonly wire: number };

/**
 * Takes up what shares a track and lays it, with the wires that wait, one by one between all the others. A pair is taken
 * up and laid together.
 * @returns every wire's draft, and the wires without a clean way
 */
export function layRest(
  scene: Scene,
  scratch: Scratch,
  wiring: Wiring,
  drafts: readonly Draft[],
  waiting: readonly number[],
): { drafts: Draft[]; failed: number[] } {
  const stubs: Stub[] = waiting.flatMap((wire) => stubsOf(scene, wiring, wire));
  const taken = takenUp(drafts, stubs, wiring);
  const rest = [...waiting, ...[...taken].map((draft) => draft.wire)].sort((a, b) => a - b);
  for (const draft of taken) stubs.push(...stubsOf(scene, wiring, draft.wire));
  const laid: Draft[] = drafts.filter((draft) => !taken.has(draft));
  const paths = new Map<number, number[]>();
  const failed: number[] = [];
  const pending = new Set(rest);
  for (const wire of rest) {
    pending.delete(wire);
    const others: Laid[] = [...laid, ...stubs.filter((stub) => pending.has(stub.wire))];
    const circuit = wiring.circuits[wire]!;
    const [from, to] = scene.anchors[wire]!;
    const leader = wiring.leaders[wire]!;
    const led = leader === wire ? undefined : paths.get(leader);
    let points = led && besideLeader(scene, led, leader, wire, circuit, others);
    if (!points) {
      const threaded = threadWire(scene, scratch, from, to, circuit, others);
      if (!threaded.clean) failed.push(wire);
      points = threaded.points;
    }
    paths.set(wire, points);
    laid.push({ wire, circuit, bond: wiring.bonds[wire]!, points, fixed: true });
  }
  return { drafts: laid, failed };
}

function stubsOf(scene: Scene, wiring: Wiring, wire: number): Stub[] {
  return scene.anchors[wire]!.map((anchor) => {
    const tip = launch(scene, anchor);
    return { wire, circuit: wiring.circuits[wire]!, points: [anchor.x, anchor.y, tip.x, tip.y] };
  });
}

/** Drafts to take up so that no two of the rest share a track; those with the most clashes go first. */
function takenUp(drafts: readonly Draft[], stubs: readonly Stub[], wiring: Wiring): Set<Draft> {
  const taken = new Set<Draft>();
  const clashes = sharedTracks([...drafts, ...stubs]);
  if (clashes.length === 0) return taken;
  const counts = new Map<number, number>();
  for (const d of clashes) counts.set(d, (counts.get(d) ?? 0) + 1);
  for (let k = 0; k < clashes.length; k += 2) {
    const free = [clashes[k]!, clashes[k + 1]!].filter((d) => d < drafts.length);
    if (free.some((d) => taken.has(drafts[d]!))) continue;
    const mayGo = free.filter((d) => !drafts[d]!.fixed);
    mayGo.sort((p, q) => counts.get(q)! - counts.get(p)! || p - q);
    if (mayGo.length > 0) taken.add(drafts[mayGo[0]!]!);
  }
  const pairs = new Set(
    [...taken].filter((draft) => draft.bond >= 0).map((draft) => wiring.leaders[draft.wire]!),
  );
  for (const draft of drafts) if (pairs.has(wiring.leaders[draft.wire]!) && !draft.fixed) taken.add(draft);
  return taken;
}

/** A path beside the leader's that touches nothing, if there is one. */
function besideLeader(
  scene: Scene,
  path: readonly number[],
  leader: number,
  wire: number,
  circuit: number,
  others: readonly Laid[],
): number[] | undefined {
  const clear = MARGIN / 2;
  return besides(path, scene.anchors[leader]!, scene.anchors[wire]!).find((points) => {
    const inner = points.slice(2, -2);
    return (
      points.length === path.length &&
      everySegment(points, (x1, y1, x2, y2) => boxIsFree(scene.bodies, x1, y1, x2, y2)) &&
      everySegment(inner, (x1, y1, x2, y2) =>
        boxIsFree(scene.bodies, x1 - clear, y1 - clear, x2 + clear, y2 + clear),
      ) &&
      !sharesTrack(points, circuit, others)
    );
  });
}
