import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { reroute } from "../../../src/layout/route/reroute.ts";
import { route } from "../../../src/layout/route/route.ts";
import type { Path, RouteProblem } from "../../../src/layout/route/types.ts";
import { expectFaultless } from "./brute-force.ts";
import { inColumns, placed, type RandomHarness, randomHarness, seeded } from "./random-problem.ts";

type Places = readonly (readonly [number, number])[];

/** A new place for one part, near or far, on the 8-unit raster or off it, with `room` to every other part. */
function dragged(
  harness: RandomHarness,
  places: Places,
  random: () => number,
  room: number,
): [Places, number] {
  const moved = Math.floor(random() * harness.parts.length);
  const part = harness.parts[moved]!;
  for (let attempt = 0; attempt < 60; attempt++) {
    const reach = random() < 0.5 ? 120 : 1200;
    const raster = random() < 0.5 ? 8 : 1;
    const x = Math.round((places[moved]![0] + (random() - 0.5) * reach) / raster) * raster;
    const y = Math.round((places[moved]![1] + (random() - 0.5) * reach) / raster) * raster;
    const free = harness.parts.every((other, i) => {
      const [ox, oy] = places[i]!;
      const apart =
        x >= ox + other.width + room ||
        x + part.width + room <= ox ||
        y >= oy + other.height + room ||
        y + part.height + room <= oy;
      return i === moved || apart;
    });
    if (free) return [places.map((place, i) => (i === moved ? [x, y] : place)), moved];
  }
  return [places, moved];
}

/** Wires that a drag has no business with: not on the part, and nowhere near where it and its labels now are. */
function expectUntouchedKept(
  problem: RouteProblem,
  moved: number,
  before: ReadonlyMap<string, Path>,
  after: ReadonlyMap<string, Path>,
): void {
  const block = problem.blocks[moved]!;
  const on = (id: string) => id === block.id;
  const reach = Math.max(
    8,
    ...problem.wires.flatMap(({ from, to }) =>
      [from, to].filter((end) => on(end.block)).map((end) => end.stub),
    ),
  );
  for (const { id, from, to, bond } of problem.wires) {
    if (on(from.block) || on(to.block) || bond !== undefined) continue;
    const path = before.get(id)!;
    let near = false;
    for (let k = 0; k + 3 < path.length; k += 2) {
      near ||=
        Math.min(path[k]!, path[k + 2]!) < block.x + block.width + reach &&
        Math.max(path[k]!, path[k + 2]!) > block.x - reach &&
        Math.min(path[k + 1]!, path[k + 3]!) < block.y + block.height + reach &&
        Math.max(path[k + 1]!, path[k + 3]!) > block.y - reach;
    }
    if (!near) expect(after.get(id)).toBe(path);
  }
}

describe("random harnesses", () => {
  test("no wire through a part and no shared track, before and after drags; untouched wires stay", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1_000_000 }), fc.integer({ min: 20, max: 90 }), (seed, size) => {
        const random = seeded(seed);
        const harness = randomHarness(size, seed);
        let places: Places = inColumns(harness);
        let { paths, failed } = route(placed(harness, places));
        expect(failed).toEqual([]);
        expectFaultless(placed(harness, places), paths);
        for (let drag = 0; drag < 3; drag++) {
          const [next, moved] = dragged(harness, places, random, 12);
          const problem = placed(harness, next);
          const again = reroute(problem, paths, [harness.parts[moved]!.id]);
          expect(again.failed).toEqual([]);
          expectFaultless(problem, again.paths);
          expectUntouchedKept(problem, moved, paths, again.paths);
          places = next;
          paths = again.paths;
        }
      }),
      { seed: 20, numRuns: 200 },
    );
  }, 120_000);

  test("parts dropped on one another: wires with a clean way keep it, the others are named", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1_000_000 }), (seed) => {
        const random = seeded(seed);
        const harness = randomHarness(40, seed);
        const columns = inColumns(harness);
        const places = columns.map(([x, y]): [number, number] =>
          random() < 0.2
            ? [x + Math.round(random() * 400 - 200), y + Math.round(random() * 400 - 200)]
            : [x, y],
        );
        const problem = placed(harness, places);
        const { paths, failed } = route(problem);
        expectFaultless(problem, paths, failed);
      }),
      { seed: 21, numRuns: 60 },
    );
  }, 60_000);
});
