import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bandsOf } from "../../../src/layout/arrange/bands.ts";
import { clustersOf } from "../../../src/layout/arrange/clusters.ts";
import { arrangeInNode } from "../../../src/layout/arrange/node.ts";
import { orderOf } from "../../../src/layout/arrange/order.ts";
import { planOf } from "../../../src/layout/arrange/plan.ts";
import type { Arranged, ArrangeProblem } from "../../../src/layout/arrange/types.ts";
import { route } from "../../../src/layout/route/route.ts";
import type { RouteEnd } from "../../../src/layout/route/types.ts";
import { adapter, board, ending, harness, housing, plain, tooClose, wire } from "./problems.ts";

const at = (arranged: Arranged, id: string) => arranged.places.get(id)!;

function sizeOf(problem: ArrangeProblem, arranged: Arranged): { width: number; height: number } {
  const side = (values: number[]) => Math.max(...values) - Math.min(...values);
  const { blocks } = problem;
  return {
    width: side(blocks.flatMap(({ id, width }) => [at(arranged, id).x, at(arranged, id).x + width])),
    height: side(blocks.flatMap(({ id, height }) => [at(arranged, id).y, at(arranged, id).y + height])),
  };
}

function widthToHeight(problem: ArrangeProblem, arranged: Arranged): number {
  const { width, height } = sizeOf(problem, arranged);
  return width / height;
}

/** Ids of the wires for which the router finds no clean way. */
function failedWires(problem: ArrangeProblem, arranged: Arranged): readonly string[] {
  const blocks = planOf(problem).blocks.map((block) => ({ ...block, ...at(arranged, block.id) }));
  const endOf = ({ block, contact }: ArrangeProblem["wires"][number]["from"]): RouteEnd => {
    const found = blocks.find(({ id }) => id === block)!;
    const port = found.ports.find((one) => one.contact === contact)!;
    return { block, x: found.x + port.x, y: found.y + port.y, side: port.side, stub: 88 };
  };
  // Wires that meet on a contact are one circuit, and may share a track.
  const circuits = new Map<string, Set<string>>();
  const key = ({ block, contact }: { block: string; contact: number }) => `${block}:${contact}`;
  for (const { from, to } of problem.wires) {
    const [one, other] = [from, to].map((end) => circuits.get(key(end)) ?? new Set([key(end)]));
    for (const name of other!) one!.add(name);
    for (const name of one!) circuits.set(name, one!);
  }
  const wires = problem.wires.map(({ id, from, to }) => ({
    id,
    from: endOf(from),
    to: endOf(to),
    circuit: [...circuits.get(key(from))!][0]!,
  }));
  return route({ blocks, wires, kept: new Map() }).failed;
}

function several(count: number, make: (index: number) => ArrangeProblem): ArrangeProblem {
  const pieces = Array.from({ length: count }, (_, index) => ({ index, ...make(index) }));
  const end = (index: number, { block, contact }: { block: string; contact: number }) => ({
    block: `${index}/${block}`,
    contact,
  });
  return {
    blocks: pieces.flatMap(({ index, blocks }) =>
      blocks.map((block) => ({ ...block, id: `${index}/${block.id}` })),
    ),
    wires: pieces.flatMap(({ index, wires }) =>
      wires.map(({ id, from, to }) => ({
        id: `${index}/${id}`,
        from: end(index, from),
        to: end(index, to),
      })),
    ),
  };
}

describe("a fuse board with many lamps", () => {
  const problem = board(12, 6);

  test("is folded into strips, none taller than the sheet is wide", async () => {
    const arranged = await arrangeInNode(problem);
    const ratio = widthToHeight(problem, arranged);
    expect(ratio).toBeGreaterThan(0.5);
    expect(ratio).toBeLessThan(2.5);
    expect(tooClose(problem, arranged)).toEqual([]);
    expect(failedWires(problem, arranged)).toEqual([]);
    expect(plain(await arrangeInNode(structuredClone(problem)))).toEqual(plain(arranged));
  });

  test("each circuit stays together in one strip, its joints left of its lamps; strips line up", async () => {
    const arranged = await arrangeInNode(problem);
    const xs = new Set<number>();
    for (let circuit = 1; circuit <= 12; circuit++) {
      const lamps = [1, 2, 3, 4, 5, 6].map((lamp) => at(arranged, `lamp ${circuit}.${lamp}`));
      expect(new Set(lamps.map(({ x }) => x)).size).toBe(1);
      for (const id of ["switch", "feed", "return", "ground"]) {
        expect(at(arranged, `${id} ${circuit}`).x).toBeLessThan(lamps[0]!.x);
      }
      xs.add(lamps[0]!.x);
    }
    expect(xs.size).toBeGreaterThan(1);
    expect(xs.size).toBeLessThanOrEqual(6);
  });

  test("circuits follow each other in the order of the board's contacts", async () => {
    const arranged = await arrangeInNode(problem);
    const circuits = Array.from({ length: 12 }, (_, index) => `lamp ${index + 1}.1`);
    const read = [...circuits].sort(
      (a, b) => at(arranged, a).x - at(arranged, b).x || at(arranged, a).y - at(arranged, b).y,
    );
    // Circuits that stay with the board itself are in whatever order ELK finds best.
    const first = Math.min(...circuits.map((id) => at(arranged, id).x));
    const beside = (ids: string[]) => ids.filter((id) => at(arranged, id).x > first);
    expect(beside(read)).toEqual(beside(circuits));
  });

  test("a circuit with a wire to elsewhere is no cluster, nor is one with a part of the vehicle", () => {
    const tied = {
      blocks: [...problem.blocks, ending("tie"), housing("V2", "vehicle", 1)],
      wires: [
        ...problem.wires,
        wire("t", ["return 1", 2], ["return 2", 2]),
        wire("v", ["V2", 1], ["feed 3", 1]),
      ],
    };
    const plan = planOf(tied);
    const clusters = clustersOf(plan, plan.components[0]!);
    const names = clusters.map(({ component }) =>
      component.blocks.map((block) => plan.blocks[block]!.id).find((id) => id.startsWith("switch")),
    );
    // 1 and 2 hang together, so they are one cluster.
    expect(names).toEqual(["switch 1", ...[4, 5, 6, 7, 8, 9, 10, 11, 12].map((n) => `switch ${n}`)]);
    expect(clusters.map(({ feeds }) => feeds.length)).toEqual([2, 1, 1, 1, 1, 1, 1, 1, 1, 1]);
  });
});

describe("a harness of many housings", () => {
  test.each([200, 300])("%i wires: bands side by side", async (count) => {
    const problem = harness(count);
    const arranged = await arrangeInNode(problem);
    const ratio = widthToHeight(problem, arranged);
    expect(ratio).toBeGreaterThan(0.5);
    expect(ratio).toBeLessThan(2.5);
    expect(tooClose(problem, arranged)).toEqual([]);
    expect(failedWires(problem, arranged)).toEqual([]);
  });

  test("is not cut where every cut would part much", () => {
    // Every housing of the vehicle has a wire to every housing of the equipment.
    const sides = Array.from({ length: 12 }, (_, index) => index);
    const problem = {
      blocks: sides.flatMap((n) => [housing(`V${n}`, "vehicle", 12), housing(`E${n}`, "equipment", 12)]),
      wires: sides.flatMap((n) => sides.map((m) => wire(`${n}-${m}`, [`V${n}`, m + 1], [`E${m}`, n + 1]))),
    };
    const bands = (of: ArrangeProblem) => {
      const plan = planOf(of);
      const [whole] = plan.components;
      return bandsOf(plan, whole!, orderOf(plan, whole!), 2);
    };
    expect(bands(problem)).toBeNull();
    expect(bands(harness(200))).toHaveLength(2);
  });
});

describe("pieces that no wire joins", () => {
  test("stand side by side where a stack would be tall, each with its vehicle left", async () => {
    const problem = several(9, (index) => adapter(8, 0, 0.3, index + 1));
    const loose = [housing("L", "equipment", 4), ending("C")];
    const all = { ...problem, blocks: [...problem.blocks, ...loose] };
    const arranged = await arrangeInNode(all);
    const ratio = widthToHeight(all, arranged);
    expect(ratio).toBeGreaterThan(0.5);
    expect(ratio).toBeLessThan(2.5);
    expect(tooClose(all, arranged)).toEqual([]);
    for (let index = 0; index < 9; index++) {
      expect(at(arranged, `${index}/V1`).x).toBeLessThan(at(arranged, `${index}/S0`).x);
      expect(at(arranged, `${index}/S0`).x).toBeLessThan(at(arranged, `${index}/E1`).x);
    }
  });

  test("a small drawing stays one stack", async () => {
    const problem = several(4, (index) => adapter(5, 0, 0, index + 1));
    const arranged = await arrangeInNode(problem);
    expect(new Set([0, 1, 2, 3].map((index) => at(arranged, `${index}/V1`).x)).size).toBe(1);
    expect(new Set([0, 1, 2, 3].map((index) => at(arranged, `${index}/E1`).x)).size).toBe(1);
  });
});

test("whatever is pinned in a folded drawing stays, and nothing overlaps", { timeout: 120_000 }, async () => {
  const made = fc.oneof(
    fc.integer({ min: 1, max: 9 }).map((seed) => harness(160, seed)),
    fc
      .tuple(fc.integer({ min: 6, max: 12 }), fc.integer({ min: 1, max: 6 }))
      .map(([circuits, lamps]) => board(circuits, lamps)),
    fc.integer({ min: 2, max: 6 }).map((count) => several(count, (index) => adapter(12, 2, 0.5, index))),
  );
  const pins = fc.array(
    fc.record({
      place: fc.nat(),
      x: fc.integer({ min: -900, max: 4000 }),
      y: fc.integer({ min: -900, max: 4000 }),
    }),
    { maxLength: 4 },
  );
  await fc.assert(
    fc.asyncProperty(made, pins, async (problem, list) => {
      const pinned = new Map(list.map(({ place, x, y }) => [place % problem.blocks.length, { x, y }]));
      const blocks = problem.blocks.map((block, index) => ({ ...block, pinned: pinned.get(index) ?? null }));
      const arranged = await arrangeInNode({ ...problem, blocks });
      for (const block of blocks) {
        const place = at(arranged, block.id);
        if (block.pinned) expect(place).toEqual(block.pinned);
        else expect([Math.abs(place.x % 8), Math.abs(place.y % 8)]).toEqual([0, 0]);
      }
      expect(tooClose({ ...problem, blocks }, arranged)).toEqual([]);
    }),
    { numRuns: 24, seed: 12 },
  );
});
