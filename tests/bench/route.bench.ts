import { measure } from "../../src/layout/route/measure.ts";
import { reroute } from "../../src/layout/route/reroute.ts";
import { route } from "../../src/layout/route/route.ts";
import type { Path, RouteProblem } from "../../src/layout/route/types.ts";
import { elkPlacement } from "../layout/route/elk-placement.ts";
import { placed, randomHarness } from "../layout/route/random-problem.ts";

const SIZES = [50, 200, 1000];
const SEED = 7;
const REPEATS = 9;

/** Median and fastest of several runs: on a busy machine only the fastest says something about the code. */
function timed(work: () => unknown): string {
  const times: number[] = [];
  for (let k = 0; k < REPEATS; k++) {
    const start = performance.now();
    work();
    times.push(performance.now() - start);
  }
  times.sort((a, b) => a - b);
  return `${times[times.length >> 1]!.toFixed(1)}/${times[0]!.toFixed(1)}`;
}

function line(name: string, time: string, problem: RouteProblem, paths: ReadonlyMap<string, Path>): string {
  const m = measure(problem, paths);
  const cells = [time, m.crossings, m.bends, Math.round(m.length), m.overlaps, m.tooClose, m.throughBlocks];
  return `${name.padEnd(26)}${cells.map((cell) => String(cell).padStart(12)).join("")}`;
}

/** Wire routing: ours beside plain elkjs on the very same placement, and one drag. Returns lines to print. */
export async function bench(): Promise<string[]> {
  const out = [
    "wire routing on elkjs's own placement (ms: median/fastest of 9 after warm-up; elkjs: placement and routes, once)",
    `${"".padEnd(26)}${["ms", "crossings", "bends", "length", "overlaps", "too close", "through"].map((c) => c.padStart(12)).join("")}`,
  ];
  const warm = await elkPlacement(randomHarness(200, 1));
  for (let k = 0; k < 12; k++) route(warm.problem);
  for (const size of SIZES) {
    const harness = randomHarness(size, SEED);
    const start = performance.now();
    const { problem, places, elkPaths } = await elkPlacement(harness);
    const elkMs = performance.now() - start;
    const routed = route(problem);
    const wires = `${problem.wires.length} wires`;
    out.push(line(`${wires}, elkjs`, elkMs.toFixed(0), problem, elkPaths));
    out.push(
      line(
        `${wires}, ours`,
        timed(() => route(problem)),
        problem,
        routed.paths,
      ),
    );
    const joint = harness.parts.findIndex((part) => part.id.startsWith("splice"));
    const plug = harness.parts.findIndex((part) => part.column === 2);
    for (const [what, moved] of [
      ["a joint", joint],
      ["a connector", plug],
    ] as const) {
      const after = placed(
        harness,
        places.map(([x, y], i) => (i === moved ? [x + 48, y + 12] : [x, y])),
      );
      const ids = [harness.parts[moved]!.id];
      const again = reroute(after, routed.paths, ids);
      let anew = 0;
      for (const [id, path] of again.paths) if (routed.paths.get(id) !== path) anew++;
      const ms = timed(() => reroute(after, routed.paths, ids));
      out.push(line(`  ${what} dragged (${anew})`, ms, after, again.paths));
    }
  }
  return out;
}
