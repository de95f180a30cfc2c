import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { arrangeWith } from "../../../src/layout/arrange/arrange.ts";
import { loadElk } from "../../../src/layout/arrange/elk.ts";
import { arrangeInNode } from "../../../src/layout/arrange/node.ts";
import { planOf } from "../../../src/layout/arrange/plan.ts";
import type { Arranged } from "../../../src/layout/arrange/types.ts";
import { adapter, ending, fuse, harness, housing, plain, splice, tooClose, wire } from "./problems.ts";
import { randomProblem } from "./random-problem.ts";

const at = (arranged: Arranged, id: string) => arranged.places.get(id)!;

describe("any harness at all", () => {
  test("pinned parts stay, nothing overlaps, all is on the grid, twice the same", {
    timeout: 240_000,
  }, async () => {
    await fc.assert(
      fc.asyncProperty(randomProblem(), async (problem) => {
        const arranged = await arrangeInNode(problem);
        expect(arranged.places.size).toBe(problem.blocks.length);
        for (const block of problem.blocks) {
          const place = at(arranged, block.id);
          if (block.pinned) expect(place).toEqual(block.pinned);
          else expect([Math.abs(place.x % 8), Math.abs(place.y % 8)]).toEqual([0, 0]);
        }
        expect(tooClose(problem, arranged)).toEqual([]);
        expect(plain(await arrangeInNode(structuredClone(problem)))).toEqual(plain(arranged));
      }),
      { numRuns: 200, seed: 20 },
    );
  });

  test("ELK's routes run at right angles from contact to contact", { timeout: 120_000 }, async () => {
    await fc.assert(
      fc.asyncProperty(randomProblem(), async (problem) => {
        const arranged = await arrangeInNode(problem);
        const blocks = new Map(planOf(problem).blocks.map((block) => [block.id, block]));
        for (const { id, from, to } of problem.wires) {
          const path = arranged.paths.get(id);
          if (!path) continue;
          const end = ({ block, contact }: typeof from) => {
            const port = blocks.get(block)!.ports.find((one) => one.contact === contact)!;
            const place = at(arranged, block);
            return [place.x + port.x, place.y + port.y];
          };
          expect(path.slice(0, 2)).toEqual(end(from));
          expect(path.slice(-2)).toEqual(end(to));
          for (let i = 0; i + 3 < path.length; i += 2) {
            expect(path[i] === path[i + 2] || path[i + 1] === path[i + 3]).toBe(true);
          }
        }
      }),
      { numRuns: 60, seed: 7 },
    );
  });
});

describe("a small adapter", () => {
  test("is three clean columns", async () => {
    const problem = adapter(16);
    const arranged = await arrangeInNode(problem);
    const joints = problem.blocks.filter(({ column }) => column === "between");
    expect(new Set(joints.map(({ id }) => at(arranged, id).x)).size).toBe(1);
    const joint = at(arranged, "S0").x;
    expect(at(arranged, "V1").x + 240).toBeLessThan(joint - 2 * 88);
    expect(at(arranged, "E1").x).toBeGreaterThan(joint + 48 + 2 * 88);
  });

  test("with charts in one order has no crossings: joints stand in the order of the contacts", async () => {
    const arranged = await arrangeInNode(adapter(16, 0, 0));
    const ys = Array.from({ length: 16 }, (_, row) => at(arranged, `S${row}`).y);
    expect(ys).toEqual([...ys].sort((a, b) => a - b));
  });

  test("two wires alone run straight", async () => {
    const arranged = await arrangeInNode({
      blocks: [housing("V", "vehicle", 1), splice("S"), housing("E", "equipment", 1)],
      wires: [wire("a", ["V", 1], ["S", 1]), wire("b", ["S", 2], ["E", 1])],
    });
    expect(arranged.paths.get("a")).toHaveLength(4);
    expect(arranged.paths.get("b")).toHaveLength(4);
  });
});

describe("columns", () => {
  test("joints share a column though some stand behind a fuse", async () => {
    const blocks = [housing("V", "vehicle", 6), housing("E", "equipment", 6), fuse("F")];
    const wires = [wire("f", ["V", 1], ["F", 1]), wire("f2", ["F", 2], ["S1", 1])];
    for (let row = 1; row <= 6; row++) {
      blocks.push(splice(`S${row}`));
      if (row > 1) wires.push(wire(`l${row}`, ["V", row], [`S${row}`, 1]));
      wires.push(wire(`r${row}`, [`S${row}`, 2], ["E", row]));
    }
    const arranged = await arrangeInNode({ blocks, wires });
    const xs = new Set([1, 2, 3, 4, 5, 6].map((row) => at(arranged, `S${row}`).x));
    expect(xs.size).toBe(1);
    expect(at(arranged, "F").x).toBeLessThan([...xs][0]!);
  });

  test("a cap on the equipment's lead is turned towards it", async () => {
    const arranged = await arrangeInNode(adapter(4, 1, 0));
    expect([...arranged.turned]).toEqual(["cap e3"]);
    expect(at(arranged, "cap e3").x).toBeLessThan(at(arranged, "E1").x);
  });

  test("a cap that may not turn stands under its housing, not in the way", async () => {
    const blocks = [housing("V", "vehicle", 2), housing("E", "equipment", 2), ending("C", false)];
    const wires = [wire("a", ["V", 1], ["E", 1]), wire("b", ["E", 2], ["C", 1])];
    const arranged = await arrangeInNode({ blocks, wires });
    expect(arranged.turned.size).toBe(0);
    expect(at(arranged, "C").x).toBe(at(arranged, "E").x);
    expect(arranged.paths.has("b")).toBe(true);
  });

  test("pieces that no wire joins keep one vehicle line and one equipment line, and do not interleave", async () => {
    const blocks = ["1", "2", "3"].flatMap((n) => [
      housing(`V${n}`, "vehicle", 3),
      housing(`E${n}`, "equipment", 3),
      ...(n === "2" ? [splice("S")] : []),
    ]);
    const wires = [
      wire("a", ["V1", 1], ["E1", 1]),
      wire("b", ["V2", 1], ["S", 1]),
      wire("c", ["S", 2], ["E2", 1]),
      wire("d", ["V3", 2], ["E3", 3]),
    ];
    const arranged = await arrangeInNode({ blocks, wires });
    expect(new Set(["V1", "V2", "V3"].map((id) => at(arranged, id).x)).size).toBe(1);
    expect(new Set(["E1", "E2", "E3"].map((id) => at(arranged, id).x)).size).toBe(1);
    expect(arranged.paths.size).toBe(4);
  });

  test("parts without wires stand in their columns", async () => {
    const blocks = [housing("V", "vehicle", 3), housing("E", "equipment", 3), splice("A"), splice("B")];
    const arranged = await arrangeInNode({ blocks, wires: [] });
    expect(at(arranged, "V").y).toBe(at(arranged, "E").y);
    expect(at(arranged, "A").y).toBe(at(arranged, "B").y);
    expect(at(arranged, "V").x).toBeLessThan(at(arranged, "A").x);
    expect(at(arranged, "B").x).toBeLessThan(at(arranged, "E").x);
  });

  test("an empty drawing is no trouble, nor is a wire that leads nowhere", async () => {
    expect((await arrangeInNode({ blocks: [], wires: [] })).places.size).toBe(0);
    const lost = {
      blocks: [splice("S")],
      wires: [wire("w", ["S", 1], ["gone", 1]), wire("v", ["S", 9], ["S", 1])],
    };
    expect((await arrangeInNode(lost)).places.size).toBe(1);
  });
});

describe("pinned parts", () => {
  test("what is wired to a pinned part comes along", async () => {
    const free = await arrangeInNode(adapter(8));
    const moved = adapter(8);
    const pin = { x: at(free, "V1").x + 4000, y: at(free, "V1").y + 1600 };
    const blocks = moved.blocks.map((block) => (block.id === "V1" ? { ...block, pinned: pin } : block));
    const arranged = await arrangeInNode({ ...moved, blocks });
    for (const { id } of blocks) {
      expect(at(arranged, id)).toEqual({ x: at(free, id).x + 4000, y: at(free, id).y + 1600 });
    }
    expect(arranged.paths.size).toBe(16);
  });

  test("joints stand between two pinned housings, and keep their order", async () => {
    const problem = adapter(8, 0, 0);
    const blocks = problem.blocks.map((block) => {
      if (block.id === "V1") return { ...block, pinned: { x: -1003, y: 17 } };
      return block.id === "E1" ? { ...block, pinned: { x: 900, y: 500 } } : block;
    });
    const arranged = await arrangeInNode({ ...problem, blocks });
    const joints = Array.from({ length: 8 }, (_, row) => at(arranged, `S${row}`));
    for (const { x } of joints) expect([x > -1003 + 240 + 88, x + 48 < 900 - 88]).toEqual([true, true]);
    expect(joints.map(({ y }) => y)).toEqual(joints.map(({ y }) => y).sort((a, b) => a - b));
  });

  test("one joint pinned where the column was leaves the others near", async () => {
    const problem = adapter(8, 0, 0);
    const free = await arrangeInNode(problem);
    const pinned = { x: at(free, "S3").x + 8, y: at(free, "S3").y + 30 };
    const blocks = problem.blocks.map((block) => (block.id === "S3" ? { ...block, pinned } : block));
    const arranged = await arrangeInNode({ ...problem, blocks });
    for (let row = 0; row < 8; row++) {
      expect(Math.abs(at(arranged, `S${row}`).y - at(free, `S${row}`).y)).toBeLessThanOrEqual(96);
    }
  });
});

describe("one way through", () => {
  test("in Node and with any other copy of ELK the result is the same", async () => {
    const problem = harness(120);
    const steps: string[] = [];
    const other = await arrangeWith(await loadElk(), problem, (done, of) => steps.push(`${done}/${of}`));
    expect(plain(other)).toEqual(plain(await arrangeInNode(problem)));
    const pieces = planOf(problem).components.length;
    expect(steps).toEqual(Array.from({ length: pieces + 1 }, (_, done) => `${done}/${pieces}`));
  });

  test("a harness of 300 wires keeps its housings in the order that crosses least", async () => {
    const problem = harness(300);
    const arranged = await arrangeInNode(problem);
    // The generator wires V0 mostly to E0, and so on down, so that is the best order there is.
    for (const letter of ["V", "E"]) {
      const ids = problem.blocks.filter(({ id }) => id.startsWith(letter)).map(({ id }) => id);
      // It is set in bands side by side: read down the first, then down the second.
      const sorted = [...ids].sort(
        (a, b) => at(arranged, a).x - at(arranged, b).x || at(arranged, a).y - at(arranged, b).y,
      );
      expect(sorted).toEqual(ids);
    }
  });
});
