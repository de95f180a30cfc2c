import { expect, test } from "vitest";
import { measure } from "../../../src/layout/route/measure.ts";
import type { Path, RouteEnd, RouteProblem } from "../../../src/layout/route/types.ts";

const end: RouteEnd = { block: "a", x: 0, y: 0, side: "right", stub: 0 };

function measured(paths: Record<string, Path>, circuits: Record<string, string> = {}) {
  const problem: RouteProblem = {
    blocks: [{ id: "a", x: 40, y: 40, width: 20, height: 20 }],
    wires: Object.keys(paths).map((id) => ({ id, from: end, to: end, circuit: circuits[id] ?? id })),
    kept: new Map(),
  };
  return measure(problem, new Map(Object.entries(paths)));
}

test("bends and length", () => {
  expect(measured({ p: [0, 0, 10, 0, 10, 30, 25, 30] })).toMatchObject({
    bends: 2,
    length: 55,
    crossings: 0,
  });
});

test("two wires that cross once, and a wire that crosses itself", () => {
  expect(measured({ p: [0, 10, 20, 10], q: [10, 0, 10, 20] }).crossings).toBe(1);
  expect(measured({ p: [0, 10, 20, 10, 20, 0, 10, 0, 10, 20] }).crossings).toBe(0);
});

test("one track, too close, and far enough", () => {
  expect(measured({ p: [0, 10, 20, 10], q: [15, 10, 30, 10] })).toMatchObject({ overlaps: 1, tooClose: 0 });
  expect(measured({ p: [0, 10, 20, 10], q: [20, 10, 30, 10] })).toMatchObject({ overlaps: 0, tooClose: 0 });
  expect(measured({ p: [0, 10, 20, 10], q: [15, 15, 30, 15] })).toMatchObject({ overlaps: 0, tooClose: 1 });
  expect(measured({ p: [0, 10, 20, 10], q: [15, 18, 30, 18] })).toMatchObject({ overlaps: 0, tooClose: 0 });
});

test("wires of one circuit may share", () => {
  const same = { p: "c", q: "c" };
  expect(measured({ p: [0, 10, 20, 10], q: [15, 10, 30, 10] }, same)).toMatchObject({
    overlaps: 0,
    tooClose: 0,
  });
});

test("through a part counts, along its edge does not", () => {
  expect(measured({ p: [0, 50, 100, 50] }).throughBlocks).toBe(1);
  expect(measured({ p: [0, 40, 100, 40], q: [60, 0, 60, 100] }).throughBlocks).toBe(0);
});
