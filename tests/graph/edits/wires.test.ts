import { describe, expect, test } from "vitest";
import { align, type Box, distribute, snap, snapToGrid } from "../../../src/graph/edits/align.ts";
import { nameOfEdit } from "../../../src/graph/edits/edit.ts";
import { changeWires, renumberWires, turnWire } from "../../../src/graph/edits/wires.ts";
import type { Harness, PartId, WireId } from "../../../src/graph/harness.ts";
import { Build } from "../../build.ts";
import { done, refusal } from "../check-edit.ts";

const w = (number: number) => `w:W${number}` as WireId;

function three(): Build {
  return new Build()
    .vehicle("X1", { "1": "ground RD", "2": "ground BK", "3": "ground" })
    .unit("X2", { "1": "ground", "2": "ground", "3": "ground" })
    .path("X1.1", "X2.1")
    .path("X1.2", "X2.2")
    .path("X1.3", "X2.3");
}

const numbers = (harness: Harness) => Object.values(harness.wires).map((wire) => wire.designation);

describe("turning a wire", () => {
  test("exchanges its ends and turns its path; twice is as it was", () => {
    const start = three().harness;
    const harness = { ...start, layout: { ...start.layout, paths: { [w(1)]: [0, 1, 2, 3, 4, 5] } } };
    const turned = done(harness, turnWire(harness, w(1)));
    expect(turned.wires[w(1)]!.ends).toEqual([...harness.wires[w(1)]!.ends].reverse());
    expect(turned.layout.paths[w(1)]).toEqual([4, 5, 2, 3, 0, 1]);
    expect(done(turned, turnWire(turned, w(1)))).toEqual(harness);
  });

  test("refuses a wire that is gone", () => {
    expect(refusal(turnWire(three().harness, w(9)))).toBe("there is no wire w:W9");
  });
});

describe("changing many wires", () => {
  const white = { base: "WH", tracer: null } as const;

  test("is one step, named by what and how many, and leaves those alone that have it already", () => {
    const harness = three().harness;
    const edit = changeWires(harness, [w(1), w(2), w(2)], { colour: white, area_mm2: 0.5 });
    expect("kind" in edit && nameOfEdit(edit)).toBe("change colour, area of 2 wires");
    const after = done(harness, edit);
    expect(Object.values(after.wires).map((wire) => wire.colour?.base ?? null)).toEqual(["WH", "WH", null]);
    const again = changeWires(after, [w(1), w(3)], { colour: white, area_mm2: 0.5 });
    expect("kind" in again && nameOfEdit(again)).toBe("change colour, area of 1 wire");
    expect(done(after, again).wires[w(1)]).toBe(after.wires[w(1)]);
  });

  test("refuses what would change nothing, and to give several wires one number", () => {
    const harness = three().harness;
    expect(refusal(changeWires(harness, [w(3)], { colour: null }))).toBe("that changes nothing");
    expect(refusal(changeWires(harness, [], { colour: null }))).toBe("that changes nothing");
    const sneaky = { designation: "W7" } as unknown as { colour: null };
    expect(refusal(changeWires(harness, [w(1)], sneaky))).toContain("keep their own");
  });
});

describe("renumbering", () => {
  test("follows the order given", () => {
    const harness = three().harness;
    expect(numbers(done(harness, renumberWires(harness, [w(3), w(1), w(2)], 10)))).toEqual([
      "W11",
      "W12",
      "W10",
    ]);
  });

  test("passes over a number that a wire outside the order holds", () => {
    const harness = three().harness;
    expect(numbers(done(harness, renumberWires(harness, [w(3), w(1)])))).toEqual(["W3", "W2", "W1"]);
  });

  test("refuses when they are numbered so, or from no whole number", () => {
    const harness = three().harness;
    expect(refusal(renumberWires(harness, [w(1), w(2), w(3)]))).toContain("already");
    expect(refusal(renumberWires(harness, [w(1)], 1.5))).toContain("whole number");
  });
});

describe("aligning", () => {
  const boxes: readonly Box[] = [
    { part: "p:A" as PartId, x: 3, y: 100, width: 96, height: 40 },
    { part: "p:B" as PartId, x: 200, y: 8, width: 48, height: 80 },
    { part: "p:C" as PartId, x: 410, y: 300, width: 96, height: 40 },
  ];
  const harness = new Build().part("fuse", "A").part("fuse", "B").part("fuse", "C").harness;
  const spots = (after: Harness, axis: "x" | "y") =>
    boxes.map(({ part }) => after.layout.places[part]?.[axis]);

  test.each([
    ["left", "x", [0, 0, 0]],
    ["centre", "x", [208, 232, 208]],
    ["right", "x", [408, 456, 408]],
    ["top", "y", [8, 8, 8]],
    ["middle", "y", [152, 136, 152]],
    ["bottom", "y", [304, 264, 304]],
  ] as const)("%s, on the grid", (to, axis, expected) => {
    const after = done(harness, align(harness, boxes, to));
    expect(spots(after, axis)).toEqual(expected);
    for (const place of Object.values(after.layout.places)) expect(place.pinned).toBe(true);
  });

  test("spreads the room between neighbours and leaves the outermost", () => {
    const after = done(harness, distribute(harness, boxes, "horizontally"));
    expect(spots(after, "x")).toEqual([0, 232, 408]);
    const upright = done(harness, distribute(harness, boxes, "vertically"));
    expect(spots(upright, "y")).toEqual([176, 8, 304]);
  });

  test("refuses too few, parts that are gone, and what stands so already", () => {
    expect(refusal(align(harness, boxes.slice(1, 2), "left"))).toContain("two parts");
    expect(refusal(distribute(harness, boxes.slice(1), "vertically"))).toContain("three parts");
    const gone = { ...boxes[0]!, part: "p:gone" as PartId };
    expect(refusal(align(harness, [gone, boxes[1]!], "left"))).toContain("no part");
    const after = done(harness, align(harness, boxes, "left"));
    const standing = boxes.map((box) => ({ ...box, ...after.layout.places[box.part]! }));
    expect(refusal(align(after, standing, "left"))).toContain("already");
  });

  test("snapping goes to the nearest eight, below zero too, and never to minus zero", () => {
    expect([11.9, 12, -11.9, -3, 0].map((value) => snap(value))).toEqual([8, 16, -8, 0, 0]);
    expect(Object.is(snap(-1), 0)).toBe(true);
    expect(spots(done(harness, snapToGrid(harness, boxes)), "x")).toEqual([0, 200, 408]);
  });
});
