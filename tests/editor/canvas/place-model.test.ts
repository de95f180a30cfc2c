import { describe, expect, test } from "vitest";
import {
  addPart,
  capEdit,
  capTargets,
  changePlaces,
  cutWire,
} from "../../../src/editor/canvas/place-model.ts";
import { trace } from "../../../src/graph/trace.ts";
import { makeScene } from "../../../src/layout/scene.ts";
import { adapter, adapterAt, edited, placedHarness } from "./a-harness.ts";

const built = adapter().wire("X1.A4", "X2.1").wire("X1.A8", "loose");
const harness = placedHarness(built.harness, { X1: [0, 0], X2: [900, 0] });
const scene = makeScene(harness);
const nothing = { parts: new Set<never>(), wires: new Set<never>(), contact: null };

describe("caps", () => {
  test("of a connector: each lead that nothing is drawn to, and each loose wire, once", () => {
    const selection = { ...nothing, parts: new Set([built.at("X1.A4").part]) };
    const targets = capTargets(harness, trace(harness), selection);
    expect(targets).toHaveLength(3);
    const next = edited(harness, capEdit(harness, scene, targets));
    const caps = Object.values(next.parts).filter((part) => part.kind === "cap");
    expect(caps).toHaveLength(3);
    for (const cap of caps) {
      const placed = makeScene(next).parts.get(cap.id)!;
      expect(placed.x).toBeGreaterThan(scene.parts.get(built.at("X1.A4").part)!.shape.width);
      expect(trace(next).wiresAt(`${cap.id}#1`)).toHaveLength(1);
    }
  });
  test("of one contact: only that one", () => {
    const selection = { ...nothing, parts: new Set([built.at("X1.A7").part]), contact: built.at("X1.A7") };
    expect(capTargets(harness, trace(harness), selection)).toEqual([built.at("X1.A7")]);
  });
  test("a joined contact is no spare", () => {
    const selection = { ...nothing, contact: built.at("X1.A4") };
    expect(capTargets(harness, trace(harness), selection)).toEqual([]);
  });
});

test("a part is added near the spot, on nothing else, pinned, under the next designation", () => {
  const { edit, id } = addPart(harness, scene, "relay", { x: 20, y: 20 });
  const next = edited(harness, edit);
  expect(next.parts[id]).toMatchObject({ kind: "relay", designation: "K1" });
  expect(next.layout.places[id]?.pinned).toBe(true);
  const now = makeScene(next);
  const relay = now.parts.get(id)!;
  const x1 = now.parts.get(built.at("X1.A4").part)!;
  expect(
    relay.x >= x1.x + x1.shape.width ||
      relay.x + relay.shape.width <= x1.x ||
      relay.y >= x1.shape.height ||
      relay.y + relay.shape.height <= x1.y,
  ).toBe(true);
});

test("a wire is cut in its longest piece, and both halves keep its colour", () => {
  const [wire] = Object.values(harness.wires);
  const next = edited(harness, cutWire(harness, scene, wire!.id));
  expect(Object.values(next.parts).some((part) => part.kind === "splice")).toBe(true);
  const halves = Object.values(next.wires).filter((one) => !one.ends.includes("loose"));
  expect(halves.map((one) => one.colour)).toEqual([wire!.colour, wire!.colour]);
});

test("turning keeps a part where it is, and nothing selected is refused", () => {
  const { harness: bare, scene: at } = adapterAt();
  const id = built.at("X2.1").part;
  const next = edited(
    bare,
    changePlaces(at, [id], "turn X2", (place) => ({ ...place, turned: !place.turned })),
  );
  expect(next.layout.places[id]).toMatchObject({ x: 900, y: 0, turned: true });
  expect(changePlaces(at, [], "turn", (place) => place)).toMatchObject({ ok: false });
});
