import { describe, expect, test } from "vitest";
import { draggedScene, moveEdit, snapShift, wiresTaken } from "../../../src/editor/canvas/drag-model.ts";
import { contactSpot } from "../../../src/editor/canvas/nodes-model.ts";
import { makeScene } from "../../../src/layout/scene.ts";
import { adapter, edited, placedHarness } from "./a-harness.ts";

const built = adapter().part("fuse", "F1").wire("X1.A7", "F1.1").wire("X1.A8", "X2.3");
const harness = placedHarness(built.harness, { X1: [0, 0], X2: [900, 0], F1: [480, 240] });
const scene = makeScene(harness);
const fuse = built.at("F1.1").part;

describe("snapShift", () => {
  test("puts a part on the grid", () => {
    const { dx, dy } = snapShift(scene, new Set([fuse]), fuse, 13, 203);
    expect([(480 + dx) % 8, (240 + dy) % 8]).toEqual([0, 0]);
  });
  test("takes the row of the contact that its wire comes from", () => {
    const row = contactSpot(scene, built.at("X1.A7").part, built.at("X1.A7").contact)!.y;
    const here = contactSpot(scene, fuse, 1)!.y;
    const { dy, guides } = snapShift(scene, new Set([fuse]), fuse, 0, row - here + 6);
    expect(here + dy).toBe(row);
    expect(guides).toHaveLength(1);
    expect(guides[0]![2]).toBe(row);
  });
  test("goes anywhere where it is asked to", () => {
    expect(snapShift(scene, new Set([fuse]), fuse, 3, -5, true)).toEqual({ dx: 3, dy: -5, guides: [] });
  });
});

test("a move is one named edit, and pins what a person put somewhere", () => {
  const change = moveEdit(harness, scene, [fuse], 16, 8);
  expect(change).toMatchObject({ kind: "group", name: "move F1" });
  expect(edited(harness, change).layout.places[fuse]).toEqual({
    x: 496,
    y: 248,
    pinned: true,
    turned: false,
  });
  expect(moveEdit(harness, scene, scene.parts.keys(), 8, 0)).toMatchObject({ name: "move 3 parts" });
});

describe("while a part is dragged", () => {
  const moving = new Set([fuse]);
  const taken = wiresTaken(scene, moving);
  const during = draggedScene(scene, "metric", moving, taken, 40, 160);
  const [along] = Object.values(harness.wires).filter((wire) => taken.has(wire.id));
  const [staying] = Object.values(harness.wires).filter((wire) => !taken.has(wire.id));

  test("wires that do not end on it are the very same", () => {
    expect(during.wires.get(staying!.id)).toBe(scene.wires.get(staying!.id));
    expect(during.parts.get(built.at("X1.A7").part)).toBe(scene.parts.get(built.at("X1.A7").part));
  });
  test("its wires end on it where it is now, at right angles", () => {
    const { path } = during.wires.get(along!.id)!;
    const spot = contactSpot(during, fuse, 1)!;
    expect(path.slice(-2)).toEqual([spot.x, spot.y]);
    expect(path.slice(0, 2)).toEqual(scene.wires.get(along!.id)!.path.slice(0, 2));
    for (let i = 0; i + 3 < path.length; i += 2) {
      expect(path[i] === path[i + 2] || path[i + 1] === path[i + 3]).toBe(true);
    }
  });
  test("in haste, its wires still end on it at right angles", () => {
    for (const [dx, dy] of [
      [40, 160],
      [-700, 30],
      [0, 0],
    ] as const) {
      const hasty = draggedScene(scene, "metric", moving, taken, dx, dy, true);
      const { path } = hasty.wires.get(along!.id)!;
      const spot = contactSpot(hasty, fuse, 1)!;
      expect(path.slice(-2)).toEqual([spot.x, spot.y]);
      for (let i = 0; i + 3 < path.length; i += 2) {
        expect(path[i] === path[i + 2] || path[i + 1] === path[i + 3]).toBe(true);
      }
    }
  });
  test("a wire between two parts that move together moves with them, as it is", () => {
    const both = new Set([fuse, built.at("X1.A7").part]);
    const { path } = draggedScene(scene, "metric", both, wiresTaken(scene, both), 8, -16).wires.get(
      along!.id,
    )!;
    const before = scene.wires.get(along!.id)!.path;
    expect(path).toEqual(before.map((value, index) => value + (index % 2 ? -16 : 8)));
  });
  test("where it is let go, the harness has it where it was shown", () => {
    const next = makeScene(edited(harness, moveEdit(harness, scene, moving, 40, 160)));
    expect(contactSpot(next, fuse, 1)).toEqual(contactSpot(during, fuse, 1));
  });
});
