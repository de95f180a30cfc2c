import { describe, expect, test } from "vitest";
import { movedHarness, moveEdit, snapShift } from "../../../src/editor/canvas/drag-model.ts";
import { contactSpot } from "../../../src/editor/canvas/nodes-model.ts";
import { keepPaths } from "../../../src/layout/arrangement.ts";
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

test("while a part is dragged, wires it does not touch keep the very same path", () => {
  const kept = edited(harness, keepPaths(harness, scene.wires));
  const moved = makeScene(movedHarness(kept, scene, [fuse], 40, 160));
  const untouched = Object.values(harness.wires).find(
    (wire) => !wire.ends.some((end) => end !== "loose" && end.part === fuse),
  )!;
  expect(moved.wires.get(untouched.id)!.path).toBe(kept.layout.paths[untouched.id]);
  const touched = Object.values(harness.wires).find((wire) => wire !== untouched)!;
  expect(moved.wires.get(touched.id)!.path).not.toEqual(kept.layout.paths[touched.id]);
});
