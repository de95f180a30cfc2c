import { boxIsFree } from "./field.ts";
import type { Anchor, Scene } from "./scene.ts";
import { sharedTracks } from "./shared.ts";
import { launch } from "./thread.ts";
import type { Path, RouteProblem } from "./types.ts";

/**
 * Which kept paths may stay: those that end on their contacts, leave them outward, pass through no part, and
 * share no track with another kept wire or with the first straight piece of a wire to be routed. A pair stays or goes
 * together.
 * @returns [wires] the kept path, or null where the wire must be routed
 */
export function stillFits(problem: RouteProblem, scene: Scene, circuits: Int32Array): (Path | null)[] {
  const { wires, kept } = problem;
  const out: (Path | null)[] = wires.map((wire, w) => {
    const path = kept.get(wire.id);
    const [from, to] = scene.anchors[w]!;
    return path && endsMatch(path, from, to) && clearOfBodies(scene, path) ? path : null;
  });
  const partOf = new Map<string, number[]>();
  wires.forEach((wire, w) => {
    if (wire.bond !== undefined) partOf.set(wire.bond, [...(partOf.get(wire.bond) ?? []), w]);
  });
  const together = () => {
    for (const pair of partOf.values()) if (pair.some((w) => !out[w])) for (const w of pair) out[w] = null;
  };
  together();
  if (out.every((path) => !path)) return out;
  const laid = out.flatMap((path, wire) => {
    const circuit = circuits[wire]!;
    if (path) return [{ wire, circuit, points: path, kept: true }];
    return scene.anchors[wire]!.map((anchor) => {
      const tip = launch(scene, anchor);
      return { wire, circuit, points: [anchor.x, anchor.y, tip.x, tip.y], kept: false };
    });
  });
  const clashes = sharedTracks(laid);
  for (let k = 0; k < clashes.length; k += 2) {
    const a = laid[clashes[k]!]!;
    const b = laid[clashes[k + 1]!]!;
    if ((a.kept && !out[a.wire]) || (b.kept && !out[b.wire])) continue;
    const goes = b.kept ? b : a;
    if (goes.kept) out[goes.wire] = null;
  }
  together();
  return out;
}

function endsMatch(path: Path, from: Anchor, to: Anchor): boolean {
  const n = path.length;
  if (n < 4 || path[0] !== from.x || path[1] !== from.y || path[n - 2] !== to.x || path[n - 1] !== to.y)
    return false;
  for (let k = 0; k + 3 < n; k += 2) {
    if ((path[k] === path[k + 2]) === (path[k + 1] === path[k + 3])) return false;
  }
  return (
    leaves(from, path[2]! - path[0]!, path[3]! - path[1]!) &&
    leaves(to, path[n - 4]! - path[n - 2]!, path[n - 3]! - path[n - 1]!)
  );
}

function leaves(anchor: Anchor, x: number, y: number): boolean {
  return Math.sign(x) === anchor.dx && Math.sign(y) === anchor.dy;
}

function clearOfBodies(scene: Scene, path: Path): boolean {
  for (let k = 0; k + 3 < path.length; k += 2) {
    const left = Math.min(path[k]!, path[k + 2]!);
    const top = Math.min(path[k + 1]!, path[k + 3]!);
    const right = Math.max(path[k]!, path[k + 2]!);
    const bottom = Math.max(path[k + 1]!, path[k + 3]!);
    if (!boxIsFree(scene.bodies, left, top, right, bottom)) return false;
  }
  return true;
}
