import { describe, expect, test } from "vitest";
import { measure } from "../../../src/layout/route/measure.ts";
import { reroute } from "../../../src/layout/route/reroute.ts";
import { route } from "../../../src/layout/route/route.ts";
import type { Block, Path, RouteEnd, RouteProblem, WireToRoute } from "../../../src/layout/route/types.ts";
import { expectFaultless } from "./brute-force.ts";
import { inColumns, placed, randomHarness } from "./random-problem.ts";

const plug: Block = { id: "plug", x: 0, y: 0, width: 160, height: 200 };
const socket: Block = { id: "socket", x: 600, y: 0, width: 160, height: 200 };
const fromPlug = (y: number): RouteEnd => ({ block: "plug", x: 160, y, side: "right", stub: 60 });
const intoSocket = (y: number): RouteEnd => ({ block: "socket", x: 600, y, side: "left", stub: 60 });
const wire = (id: string, from: RouteEnd, to: RouteEnd, bond?: string): WireToRoute => ({
  id,
  from,
  to,
  circuit: id,
  ...(bond === undefined ? {} : { bond }),
});
const problem = (wires: WireToRoute[], blocks: Block[] = [plug, socket]): RouteProblem => ({
  blocks,
  wires,
  kept: new Map(),
});
const pathOf = (p: RouteProblem, id: string): Path => route(p).paths.get(id)!;

describe("one wire", () => {
  test("runs straight between contacts of one row", () => {
    expect(pathOf(problem([wire("a", fromPlug(44), intoSocket(44))]), "a")).toEqual([160, 44, 600, 44]);
  });

  test("bends twice between the labels of two rows", () => {
    const path = pathOf(problem([wire("a", fromPlug(44), intoSocket(92))]), "a");
    expect(path).toHaveLength(8);
    expect(path[2]).toBeGreaterThanOrEqual(160 + 60);
    expect(path[2]).toBeLessThanOrEqual(600 - 60);
  });

  test("drops onto a ground's top in one corner", () => {
    const ground: Block = { id: "ground", x: 400, y: 300, width: 32, height: 32 };
    const p = problem(
      [wire("a", fromPlug(44), { block: "ground", x: 416, y: 300, side: "top", stub: 16 })],
      [plug, ground],
    );
    expect(pathOf(p, "a")).toEqual([160, 44, 416, 44, 416, 300]);
  });

  test("goes round a part that stands in its row, clear of it by the margin", () => {
    const wall: Block = { id: "wall", x: 340, y: -400, width: 80, height: 800 };
    const p = problem([wire("a", fromPlug(44), intoSocket(44))], [plug, socket, wall]);
    const path = pathOf(p, "a");
    expectFaultless(p, new Map([["a", path]]));
    const rows = path.filter((_, k) => k % 2 === 1);
    expect(Math.min(...rows) <= -408 || Math.max(...rows) >= 408).toBe(true);
  });

  test("comes back to a contact on the same side", () => {
    const p = problem([wire("a", fromPlug(44), fromPlug(140))]);
    const path = pathOf(p, "a");
    expectFaultless(p, new Map([["a", path]]));
    expect(path).toHaveLength(8);
    expect(path[2]).toBeGreaterThanOrEqual(220);
  });

  test("with its contact buried under another part is named, and still has a path", () => {
    const lid: Block = { id: "lid", x: 100, y: 20, width: 160, height: 60 };
    const { paths, failed } = route(problem([wire("a", fromPlug(44), intoSocket(44))], [plug, socket, lid]));
    expect(failed).toEqual(["a"]);
    expect(paths.get("a")!.slice(0, 2)).toEqual([160, 44]);
    expect(paths.get("a")!.slice(-2)).toEqual([600, 44]);
  });

  test("with parts closer than its labels ask still gets through", () => {
    const near: Block = { ...socket, x: 200 };
    const p = problem([wire("a", fromPlug(44), { ...intoSocket(92), x: 200 })], [plug, near]);
    const { paths, failed } = route(p);
    expect(failed).toEqual([]);
    expectFaultless(p, paths);
  });
});

describe("several wires", () => {
  test("that need not cross do not", () => {
    const rows = [20, 44, 68, 92, 116];
    const down = problem(rows.map((y, i) => wire(`w${i}`, fromPlug(y), intoSocket(y + 72))));
    expect(measure(down, route(down).paths)).toMatchObject({
      crossings: 0,
      overlaps: 0,
      tooClose: 0,
      bends: 10,
    });
    const up = problem(rows.map((y, i) => wire(`w${i}`, fromPlug(y + 72), intoSocket(y))));
    expect(measure(up, route(up).paths)).toMatchObject({ crossings: 0, overlaps: 0, tooClose: 0, bends: 10 });
  });

  test("that change places cross once for each pair", () => {
    const rows = [20, 44, 68, 92];
    const p = problem(rows.map((y, i) => wire(`w${i}`, fromPlug(y), intoSocket(rows[3 - i]! + 12))));
    expect(measure(p, route(p).paths)).toMatchObject({ crossings: 6, overlaps: 0 });
  });

  test("with facing contacts in one row turn off before they meet", () => {
    // Each wire's row at one side is the other wire's row at the other side: one order of the columns would lay both
    // wires on one track.
    const p = problem([wire("a", fromPlug(44), intoSocket(92)), wire("b", fromPlug(92), intoSocket(140))]);
    expectFaultless(p, route(p).paths);
    const circle = problem([
      wire("a", fromPlug(44), intoSocket(92)),
      wire("b", fromPlug(92), intoSocket(44)),
    ]);
    expectFaultless(circle, route(circle).paths);
  });

  test("of a pair run one spacing apart with the same bends", () => {
    const wall: Block = { id: "wall", x: 340, y: -400, width: 80, height: 800 };
    for (const blocks of [
      [plug, socket],
      [plug, { ...socket, x: 900 }, wall],
    ]) {
      const x = blocks[1]!.x;
      const p = problem(
        [
          wire("plus", fromPlug(44), { ...intoSocket(140), x }, "speaker"),
          wire("other", fromPlug(116), { ...intoSocket(92), x }),
          wire("minus", fromPlug(68), { ...intoSocket(164), x }, "speaker"),
        ],
        blocks,
      );
      const { paths } = route(p);
      expectFaultless(p, paths);
      const plus = paths.get("plus")!;
      const minus = paths.get("minus")!;
      expect(plus.length).toBe(minus.length);
      for (let k = 2; k + 5 < plus.length; k += 2) {
        const along = plus[k] === plus[k + 2] ? 0 : 1;
        expect(Math.abs(plus[k + along]! - minus[k + along]!)).toBeCloseTo(8);
      }
    }
  });

  test("squeeze together in a narrow strip and never onto one track", () => {
    const near: Block = { ...socket, x: 160 + 60 + 60 + 20, height: 500 };
    const tall: Block = { ...plug, height: 500 };
    const wires = Array.from({ length: 12 }, (_, i) =>
      wire(`w${i}`, fromPlug(20 + 24 * i), { ...intoSocket(200 + 24 * i), x: near.x }),
    );
    const p = problem(wires, [tall, near]);
    const { paths, failed } = route(p);
    expect(failed).toEqual([]);
    expectFaultless(p, paths);
  });
});

describe("what stays", () => {
  const harness = randomHarness(60, 3);
  const places = inColumns(harness);
  const before = placed(harness, places);

  test("the same problem gives the same paths", () => {
    expect([...route(before).paths]).toEqual([...route(structuredClone(before)).paths]);
  });

  test("paths that still fit are returned as the very same arrays", () => {
    const { paths } = route(before);
    const again = route({ ...before, kept: paths });
    for (const [id, path] of again.paths) expect(path).toBe(paths.get(id));
  });

  test("a kept path that no longer ends on its contact, or runs through a part, is replaced", () => {
    const p = problem([wire("a", fromPlug(44), intoSocket(44))]);
    const astray = new Map<string, Path>([["a", [160, 50, 600, 50]]]);
    expect(route({ ...p, kept: astray }).paths.get("a")).toEqual([160, 44, 600, 44]);
    const wall: Block = { id: "wall", x: 340, y: 0, width: 80, height: 80 };
    const walled = {
      ...problem(p.wires.slice(), [plug, socket, wall]),
      kept: new Map([["a", [160, 44, 600, 44]]]),
    };
    expectFaultless(walled, route(walled).paths);
  });

  test("a drag leaves alone the wires it does not touch", () => {
    const { paths } = route(before);
    const moved = harness.parts.findIndex((part) => part.id.startsWith("fuse"));
    const after = placed(
      harness,
      places.map(([x, y], i) => (i === moved ? [x + 96, y + 4] : [x, y])),
    );
    const again = reroute(after, paths, [harness.parts[moved]!.id]);
    expectFaultless(after, again.paths);
    const anew = after.wires.filter((w) => again.paths.get(w.id) !== paths.get(w.id));
    expect(anew.length).toBeGreaterThan(0);
    expect(anew.length).toBeLessThan(after.wires.length / 4);
  });
});
