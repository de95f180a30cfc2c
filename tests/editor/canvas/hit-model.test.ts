import { describe, expect, test } from "vitest";
import { boxOf, heldBy, hitAt, wiresIn } from "../../../src/editor/canvas/hit-model.ts";
import { contactSpot } from "../../../src/editor/canvas/nodes-model.ts";
import { makeScene } from "../../../src/layout/scene.ts";
import { adapter, adapterAt, placedHarness } from "./a-harness.ts";

describe("hitAt", () => {
  const harness = placedHarness(adapter().wire("X1.A4", "X2.1").wire("X1.A7", "loose").harness, {
    X1: [0, 0],
    X2: [900, 0],
  });
  const scene = makeScene(harness);
  const x1 = harness.parts[adapter().at("X1.A4").part]!;
  const at = contactSpot(scene, x1.id, 1)!;

  test("a point in a cavity's label cell is its contact", () => {
    expect(hitAt(scene, at.x - 16, at.y + 6, 7)).toMatchObject({
      kind: "contact",
      ref: { part: x1.id, contact: 1 },
    });
  });
  test("the nearest of two contacts is meant, however far a finger reaches", () => {
    const next = contactSpot(scene, x1.id, 2)!;
    expect(hitAt(scene, at.x, at.y + 11, 22)).toMatchObject({ ref: { contact: 1 } });
    expect(hitAt(scene, next.x, next.y - 11, 22)).toMatchObject({ ref: { contact: 2 } });
  });
  test("the rest of a housing is the part", () => {
    expect(hitAt(scene, 20, 20, 7)).toEqual({ kind: "part", part: x1.id });
  });
  test("on a wire, and beside it within reach only", () => {
    const wire = Object.values(harness.wires)[0]!;
    const path = scene.wires.get(wire.id)!.path;
    const [x, y] = [(path[0]! + path[2]!) / 2, path[1]!];
    expect(hitAt(scene, x, y + 4, 7)).toMatchObject({ kind: "wire", wire: wire.id, x, y });
    expect(hitAt(scene, x, y + 9, 7).kind).toBe("nothing");
  });
  test("a loose end is found before its wire", () => {
    const [, loose] = Object.values(harness.wires);
    const end = scene.wires.get(loose!.id)!.loose!;
    expect(hitAt(scene, end.x + 3, end.y + 3, 7)).toMatchObject({ kind: "loose", wire: loose!.id });
  });
  test("empty ground is nothing", () => {
    expect(hitAt(scene, -500, -500, 22)).toEqual({ kind: "nothing" });
  });
});

test("a box takes the parts it touches, and only wires that lie in it entirely", () => {
  const { scene: bare } = adapterAt();
  expect(heldBy(bare, boxOf(10, 10, -10, -10)).parts.size).toBe(1);
  const scene = makeScene(
    placedHarness(adapter().wire("X1.A4", "X2.1").harness, { X1: [0, 0], X2: [900, 0] }),
  );
  expect(heldBy(scene, boxOf(-10, -10, 500, 500))).toMatchObject({ wires: new Set() });
  const all = heldBy(scene, boxOf(-100, -500, 2000, 2000));
  expect([all.parts.size, all.wires.size]).toEqual([2, 1]);
});

test("wiresIn names each wire once, though several of its pieces lie in the box", () => {
  const scene = makeScene(
    placedHarness(adapter().wire("X1.A4", "X2.3").harness, { X1: [0, 0], X2: [900, 300] }),
  );
  expect(wiresIn(scene, { x: -1000, y: -1000, width: 5000, height: 5000 })).toHaveLength(1);
});
