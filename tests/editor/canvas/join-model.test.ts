import { describe, expect, test } from "vitest";
import { dropEdit, endIn, roomForLead, sayDrop } from "../../../src/editor/canvas/join-model.ts";
import { clearDrop, freeSpot } from "../../../src/editor/canvas/room-model.ts";
import { settle } from "../../../src/editor/state/derive.ts";
import { copyFragment } from "../../../src/graph/edits/copy.ts";
import { trace } from "../../../src/graph/trace.ts";
import { makeScene } from "../../../src/layout/scene.ts";
import { build } from "../../build.ts";
import { adapter, adapterAt, edited, placedHarness } from "./a-harness.ts";

const built = adapter();
const from = { contact: built.at("X1.A4") };

describe("letting a lead go on a contact", () => {
  test("says beforehand that a splice will join the two leads", () => {
    const { harness } = adapterAt();
    expect(sayDrop(harness, from, { kind: "contact", ref: built.at("X2.1") })).toBe(
      "Let go to join X1.A4 to X2.1 by a splice.",
    );
  });
  test("puts the splice on the first contact's row, clear of every part, turned the way the lead runs", () => {
    const { harness, scene } = adapterAt();
    const joined = edited(
      harness,
      dropEdit(harness, from, { kind: "contact", ref: built.at("X2.2") }, scene),
    );
    const splice = Object.values(joined.parts).find((part) => part.kind === "splice")!;
    const placed = makeScene(joined).parts.get(splice.id)!;
    const row = scene.parts.get(from.contact.part)!.shape.ports[0]!.y;
    expect(placed.y + placed.shape.ports[0]!.y).toBe(row);
    expect(placed.turned).toBe(false);
    expect(placed.x).toBeGreaterThan(300);
    expect(placed.x + placed.shape.width).toBeLessThan(900);
  });
  test("joins of neighbouring rows do not pile their splices up", () => {
    let { harness } = adapterAt();
    for (const [a, b] of [
      ["X1.A4", "X2.1"],
      ["X1.A7", "X2.2"],
      ["X1.A8", "X2.3"],
    ] as const) {
      const target = { kind: "contact", ref: built.at(b) } as const;
      harness = edited(harness, dropEdit(harness, { contact: built.at(a) }, target, makeScene(harness)));
    }
    const splices = [...makeScene(harness).parts.values()].filter(({ part }) => part.kind === "splice");
    expect(splices).toHaveLength(3);
    for (const a of splices) {
      for (const b of splices) {
        if (a === b) continue;
        const apart =
          a.x + a.shape.width <= b.x ||
          b.x + b.shape.width <= a.x ||
          a.y + a.shape.height <= b.y ||
          b.y + b.shape.height <= a.y;
        expect(apart).toBe(true);
      }
    }
  });
  test.each([
    ["from the top", [0, 1, 2, 3, 4, 5]],
    ["as they come", [3, 0, 5, 1, 4, 2]],
  ])("names of joints cover nothing written in a wire, rows joined %s", (_how, order) => {
    const rows = Object.fromEntries(order.map((_, row) => [String(row + 1), "speed WH/BK 0.75"]));
    const bench = build().vehicle("X1", rows).unit("X2", rows);
    let harness = placedHarness(bench.harness, { X1: [0, 0], X2: [720, 0] });
    for (const row of order) {
      const target = { kind: "contact", ref: bench.at(`X2.${row + 1}`) } as const;
      const from = { contact: bench.at(`X1.${row + 1}`) };
      harness = settle(
        edited(harness, dropEdit(harness, from, target, makeScene(harness))),
        null,
        null,
      ).harness;
    }
    const { parts, wires } = makeScene(harness);
    const joints = [...parts.values()].filter(({ part }) => part.kind === "splice");
    expect(joints).toHaveLength(6);
    const covered = [...wires.values()].flatMap(({ wire, labels }) =>
      labels.length === 0
        ? [`${wire.designation} has no label`]
        : labels.flatMap((label) =>
            joints
              .filter(
                ({ x, y, shape }) =>
                  Math.abs(x + shape.width / 2 - label.x) < (shape.width + label.width) / 2 &&
                  Math.abs(y + shape.height / 2 - label.y) < shape.height / 2 + 6,
              )
              .map(({ part }) => `${part.designation} on ${label.text}`),
          ),
    );
    expect(covered).toEqual([]);
  });
  test("says why it cannot be", () => {
    const { harness } = adapterAt();
    expect(sayDrop(harness, from, { kind: "contact", ref: from.contact })).toMatch(
      /cannot be joined.*same contact/,
    );
  });
});

describe("letting a lead go on a wire", () => {
  const wired = placedHarness(adapter().wire("X1.A8", "X2.3").wire("X1.A1", "loose").harness, {
    X1: [0, 0],
    X2: [900, 0],
  });
  const [target, loose] = Object.values(wired.wires);

  test("splices a new lead into it", () => {
    const scene = makeScene(wired);
    const next = edited(
      wired,
      dropEdit(wired, from, { kind: "wire", wire: target!.id }, scene, { x: 500, y: 116 }),
    );
    expect(trace(next).circuitOf("p:X1#1")?.contacts).toContain("p:X2#3");
  });
  test("brings it to the side it comes from, with room for a label on either side", () => {
    const scene = makeScene(wired);
    const path = scene.wires.get(target!.id)!.path;
    const spot = { x: path[0]! + 20, y: path[1]! };
    for (const [name, side] of [
      ["X1.A4", "left"],
      ["X2.1", "right"],
    ] as const) {
      const next = edited(
        wired,
        dropEdit(wired, { contact: built.at(name) }, { kind: "wire", wire: target!.id }, scene, spot),
      );
      const after = makeScene(next);
      const splice = [...after.parts.values()].find(({ part }) => part.kind === "splice")!;
      const drawn = Object.values(next.wires).at(-1)!;
      const landed = drawn.ends.find((end) => end !== "loose" && end.part === splice.part.id)!;
      const contact = landed === "loose" ? 0 : landed.contact;
      expect(splice.shape.ports.find((port) => port.contact === contact)!.side).toBe(side);
      for (const wire of after.wires.values()) expect(wire.labels.length).toBeGreaterThan(0);
    }
  });
  test("uses the loose wire that is there instead of drawing a second", () => {
    const source = { wire: loose!.id, open: 1 } as const;
    const next = edited(wired, dropEdit(wired, source, { kind: "wire", wire: target!.id }, makeScene(wired)));
    expect(Object.keys(next.wires)).toHaveLength(Object.keys(wired.wires).length + 1);
    expect(next.wires[loose!.id]!.ends).not.toContain("loose");
    const again = edited(
      wired,
      dropEdit(wired, { contact: built.at("X1.A1") }, { kind: "wire", wire: target!.id }, null),
    );
    expect(Object.keys(again.wires)).toHaveLength(Object.keys(wired.wires).length + 1);
  });
  test("does not splice a wire into itself", () => {
    const source = { wire: loose!.id, open: 1 } as const;
    expect(dropEdit(wired, source, { kind: "wire", wire: loose!.id }, null)).toMatchObject({ ok: false });
  });
});

test("a loose end let go on a contact is joined there, and no wire is left loose", () => {
  const harness = adapter().wire("X1.A1", "loose").harness;
  const [loose] = Object.values(harness.wires);
  const next = edited(
    harness,
    dropEdit(harness, { wire: loose!.id, open: 1 }, { kind: "contact", ref: built.at("X2.2") }, null),
  );
  expect(Object.values(next.wires).some((wire) => wire.ends.includes("loose"))).toBe(false);
  expect(trace(next).circuitOf("p:X1#4")?.contacts).toContain("p:X2#2");
});

describe("ending a lead on empty ground", () => {
  test.each(["cap", "ground", "fuse", "splice", "relay", "load"] as const)(
    "in a %s, facing where it comes from",
    (kind) => {
      const { harness, scene } = adapterAt();
      for (const [name, x] of [
        ["X1.A4", 600],
        ["X2.1", 500],
      ] as const) {
        const next = edited(harness, endIn(harness, scene, { contact: built.at(name) }, kind, { x, y: 68 }));
        const made = Object.values(next.parts).find((part) => part.kind === kind)!;
        const wire = Object.values(next.wires)[0]!;
        expect(wire.ends).toContainEqual({ part: made.id, contact: 1 });
        const placed = makeScene(next).parts.get(made.id)!;
        const port = placed.shape.ports.find((one) => one.contact === 1)!;
        expect(port.side).toBe(name === "X1.A4" ? "left" : "right");
      }
    },
  );
  test("loose leaves a loose end", () => {
    const { harness, scene } = adapterAt();
    const next = edited(harness, endIn(harness, scene, from, "loose", { x: 600, y: 68 }));
    expect(Object.values(next.wires)[0]!.ends).toContain("loose");
  });
});

test("a lead is given the room that its labels need", () => {
  expect(roomForLead({ x: 0, y: 0 }, { x: 40, y: 8 })).toEqual({ x: 128, y: 0 });
  expect(roomForLead({ x: 0, y: 0 }, { x: -40, y: 90 })).toEqual({ x: -232, y: 90 });
  expect(roomForLead({ x: 0, y: 0 }, { x: 700, y: 90 })).toEqual({ x: 700, y: 90 });
});

test("freeSpot keeps what was asked for where there is room, and goes aside where there is not", () => {
  const { scene } = adapterAt();
  const shape = { width: 48, height: 40, ports: [] };
  expect(freeSpot(scene, shape, 500, 60)).toEqual({ x: 504, y: 60 });
  const pushed = freeSpot(scene, shape, 20, 20);
  const x1 = scene.parts.get(from.contact.part)!;
  const clear =
    pushed.x >= x1.x + x1.shape.width ||
    pushed.x + 48 <= x1.x ||
    pushed.y + 40 <= x1.y ||
    pushed.y >= x1.shape.height;
  expect(clear).toBe(true);
});

test("a copy goes down until it lies on nothing, and stays where it is wanted if that is free", () => {
  const { harness, scene } = adapterAt();
  const piece = copyFragment(harness, new Set([from.contact.part]), new Set());
  const { height } = scene.parts.get(from.contact.part)!.shape;
  expect(clearDrop(scene, piece, 0, 0)).toBeGreaterThanOrEqual(height);
  expect(clearDrop(scene, piece, 8, -16)).toBeGreaterThanOrEqual(height + 16);
  expect(clearDrop(scene, piece, 0, 4 * height)).toBe(0);
});
