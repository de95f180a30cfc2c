import { describe, expect, test } from "vitest";
import { fromElk } from "../../../src/layout/arrange/from-elk.ts";
import { countCrossings } from "../../../src/layout/arrange/links.ts";
import { planOf } from "../../../src/layout/arrange/plan.ts";
import { gapsBetween, stackInGaps } from "../../../src/layout/arrange/stack.ts";
import { toElk } from "../../../src/layout/arrange/to-elk.ts";
import { adapter, housing, splice, wire } from "./problems.ts";

describe("the graph that ELK is given", () => {
  test("has each block widened by its column's room for labels, and only the contacts in use", () => {
    const problem = {
      blocks: [housing("V", "vehicle", 4), splice("S"), housing("E", "equipment", 4)],
      wires: [wire("a", ["V", 2], ["S", 1]), wire("b", ["E", 3], ["S", 2])],
    };
    const plan = planOf(problem);
    const graph = toElk(plan, plan.components[0]!);
    const joint = graph.children!.find(({ id }) => id === "b1")!;
    expect(joint).toMatchObject({ width: 48 + 88 + 88, height: 40 });
    expect(joint.ports!.map(({ x, y }) => [x, y])).toEqual([
      [0, 24],
      [224, 24],
    ]);
    expect(graph.children!.find(({ id }) => id === "b0")!.ports).toHaveLength(1);
    // Every edge leads from left to right, whichever way the wire was drawn.
    expect(graph.edges!.map(({ sources, targets }) => [sources[0], targets[0]])).toEqual([
      ["b0:2", "b1:1"],
      ["b1:2", "b2:3"],
    ]);
  });

  test("is the same for the same problem, and planning leaves the problem alone", () => {
    const problem = adapter(12, 3);
    const before = JSON.stringify(problem);
    const graph = () => toElk(planOf(problem), planOf(problem).components[0]!);
    expect(graph()).toEqual(graph());
    expect(JSON.stringify(problem)).toBe(before);
  });

  test("ELK's answer is snapped, its routes led to the contacts in the direction of the wire", () => {
    const plan = planOf({
      blocks: [housing("V", "vehicle", 1), housing("E", "equipment", 1)],
      wires: [wire("a", ["E", 1], ["V", 1])],
    });
    const laid = fromElk(plan, plan.components[0]!, {
      id: "harness",
      children: [
        { id: "b0", x: 0, y: 3, width: 328, height: 96 },
        { id: "b1", x: 400, y: 27, width: 328, height: 96 },
      ],
      edges: [
        {
          id: "w0",
          sources: ["b0:1"],
          targets: ["b1:1"],
          sections: [
            {
              id: "s",
              startPoint: { x: 328, y: 75 },
              bendPoints: [
                { x: 360, y: 75 },
                { x: 360, y: 99 },
              ],
              endPoint: { x: 400, y: 99 },
            },
          ],
        },
      ],
    });
    expect(laid.x).toEqual([0, 488]);
    expect(laid.y).toEqual([0, 24]);
    expect(laid.paths.get("a")).toEqual([488, 96, 360, 96, 360, 72, 240, 72]);
  });
});

describe("counting crossings of links", () => {
  const links = [
    { left: 0, leftY: 10, right: 2, rightY: 10 },
    { left: 1, leftY: 10, right: 3, rightY: 10 },
  ];
  const height = () => 100;
  test.each([
    [[0, 1], [2, 3], 0],
    [[1, 0], [2, 3], 1],
    [[1, 0], [3, 2], 0],
  ])("left %j right %j: %i", (left, right, crossings) => {
    expect(countCrossings({ left, right }, links, height)).toBe(crossings);
  });

  test("agrees with counting pair by pair", () => {
    const many = Array.from({ length: 60 }, (_, i) => ({
      left: i % 2,
      leftY: (i * 37) % 101,
      right: 2 + (i % 3),
      rightY: (i * 53) % 97,
    }));
    const outer = { left: [1, 0], right: [4, 2, 3] };
    const a = (link: (typeof many)[number]) => outer.left.indexOf(link.left) * 100 + link.leftY;
    const b = (link: (typeof many)[number]) => outer.right.indexOf(link.right) * 100 + link.rightY;
    let pairs = 0;
    for (const [i, one] of many.entries()) {
      for (const other of many.slice(i + 1)) if ((a(one) - a(other)) * (b(one) - b(other)) < 0) pairs++;
    }
    expect(countCrossings(outer, many, height)).toBe(pairs);
  });
});

describe("stacking beside what stands", () => {
  test("blocks that all want one place share the displacement and keep their order", () => {
    expect(stackInGaps([0, 0, 0], [40, 40, 40], gapsBetween([]))).toEqual([-56, 0, 56]);
  });

  test("goes to the nearer side of what is in the way, with a margin", () => {
    const gaps = gapsBetween([{ from: 0, to: 100 }]);
    expect(stackInGaps([10], [40], gaps)).toEqual([-56]);
    expect(stackInGaps([70], [40], gaps)).toEqual([120]);
  });

  test("a gap takes only what it has room for", () => {
    const gaps = gapsBetween([
      { from: -1000, to: 0 },
      { from: 104, to: 1000 },
    ]);
    expect(stackInGaps([20, 24], [40, 40], gaps)).toEqual([24, 1016]);
  });
});
