import { meetsBox } from "./path.ts";
import { routeIn } from "./route.ts";
import { prepare, type Scene } from "./scene.ts";
import type { Path, Routed, RouteProblem } from "./types.ts";

/**
 * Routes again after parts were moved, added or resized, and leaves alone what they do not touch: a wire is routed
 * anew when it ends on a changed part, or when its path now lies under one or under the labels before its contacts.
 * All others keep the very same array. Wires without an earlier path are routed as new ones.
 * @param problem  the drawing as it is now; its `kept` is not looked at
 * @param previous  the paths as they were
 * @param changed  ids of the parts that changed
 */
export function reroute(
  problem: RouteProblem,
  previous: ReadonlyMap<string, Path>,
  changed: Iterable<string>,
): Routed {
  const scene = prepare(problem);
  return routeIn(scene, { ...problem, kept: untouchedIn(scene, problem, previous, changed) });
}

/** The earlier paths that a change of some parts leaves alone. Same arguments as `reroute`. */
export function untouched(
  problem: RouteProblem,
  previous: ReadonlyMap<string, Path>,
  changed: Iterable<string>,
): Map<string, Path> {
  return untouchedIn(prepare(problem), problem, previous, changed);
}

function untouchedIn(
  { zones }: Scene,
  problem: RouteProblem,
  previous: ReadonlyMap<string, Path>,
  changed: Iterable<string>,
): Map<string, Path> {
  const moved = new Set(changed);
  const covers = problem.blocks.flatMap((block, i) => (moved.has(block.id) ? [i] : []));
  const kept = new Map<string, Path>();
  for (const wire of problem.wires) {
    const path = previous.get(wire.id);
    if (!path || moved.has(wire.from.block) || moved.has(wire.to.block)) continue;
    if (covers.some((i) => meetsBox(path, zones.x1[i]!, zones.y1[i]!, zones.x2[i]!, zones.y2[i]!))) continue;
    kept.set(wire.id, path);
  }
  return kept;
}
