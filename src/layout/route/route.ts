import { chooseWays } from "./choose.ts";
import { type Draft, lanesOf, settle } from "./lane.ts";
import { layRest } from "./lay-rest.ts";
import { orderChannels } from "./order.ts";
import { prepare, type Scene } from "./scene.ts";
import { makeScratch } from "./search.ts";
import { spread } from "./spread.ts";
import { stillFits } from "./still-fits.ts";
import type { Path, Routed, RouteProblem } from "./types.ts";
import { wiringOf } from "./wiring.ts";

/**
 * Routes the wires of a drawing at right angles round its parts.
 *
 * 1. Each wire's way round the parts is chosen (`choose`): through which strips between columns and which gaps in
 *    them. Its contacts' rows are given; everything between may still shift.
 * 2. Segments that run side by side are put in the order with the fewest crossings and spread over the room
 *    that there is (`order`, `sift`, `spread`), rows first, then columns.
 * 3. What still shares a track, or starts where parts stand too close, is laid wire by wire on a fine grid
 *    between all the others (`lay-rest`, `thread`).
 *
 * @returns a path for every wire. Paths in `problem.kept` that still fit are returned as they are (the same array).
 *   The same problem always gives the same paths.
 * @throws nothing: a wire with no clean way gets the best there is and is named in `failed`.
 */
export function route(problem: RouteProblem): Routed {
  return routeIn(prepare(problem), problem);
}

/** `route` for a caller that has already prepared the scene of the same problem. */
export function routeIn(scene: Scene, problem: RouteProblem): Routed {
  const { wires } = problem;
  const wiring = wiringOf(wires);
  const kept = stillFits(problem, scene, wiring.circuits);
  const scratch = makeScratch();
  const { drafts, waiting } = chooseWays(scene, scratch, wiring, kept);
  arrangeLanes(scene, drafts, false);
  arrangeLanes(scene, drafts, true);
  const laid = layRest(scene, scratch, wiring, drafts, waiting);
  const points = new Map<number, Path>(laid.drafts.map((draft) => [draft.wire, draft.points]));
  const paths = new Map<string, Path>();
  for (let w = 0; w < wires.length; w++) paths.set(wires[w]!.id, kept[w] ?? points.get(w)!);
  return { paths, failed: laid.failed.sort((a, b) => a - b).map((w) => wires[w]!.id) };
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
