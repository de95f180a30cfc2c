import { describe, expect, test } from "vitest";
import { type Cursor, cursorOf, moveByKey, selectionOf } from "../../../src/editor/canvas/keyboard-model.ts";
import { trace } from "../../../src/graph/trace.ts";
import { makeScene } from "../../../src/layout/scene.ts";
import { adapter, placedHarness } from "./a-harness.ts";

const built = adapter().wire("X1.A4", "X2.1").wire("X1.A4", "X2.2").wire("X1.A8", "loose");
const harness = placedHarness(built.harness, { X1: [0, 0], X2: [900, 0] });
const view = { harness, traced: trace(harness), scene: makeScene(harness) };
const press = (cursor: Cursor, ...keys: readonly string[]): Cursor | null => {
  let now: Cursor | null = cursor;
  for (const key of keys) now = now && moveByKey(view, now, key, false);
  return now;
};
const x1: Cursor = { level: "part", part: built.at("X1.A4").part };
const contact = (name: string): Cursor => ({ level: "contact", ref: built.at(name) });

describe("moveByKey", () => {
  test("an arrow from nowhere goes to the first part, and on in its direction", () => {
    expect(press({ level: "none" }, "ArrowRight")).toEqual(x1);
    expect(press(x1, "ArrowRight")).toEqual({ level: "part", part: built.at("X2.1").part });
    expect(press(x1, "ArrowLeft")).toBeNull();
  });
  test("Enter goes in to the contacts, up and down among them, Escape back out", () => {
    expect(press(x1, "Enter")).toEqual(contact("X1.A4"));
    expect(press(x1, "Enter", "ArrowDown", "ArrowDown")).toEqual(contact("X1.A8"));
    expect(press(x1, "Enter", "End")).toEqual(contact("X1.A1"));
    expect(press(x1, "Enter", "ArrowUp")).toBeNull();
    expect(press(x1, "Enter", "Escape")).toEqual(x1);
    expect(press(x1, "Escape")).toEqual({ level: "none" });
  });
  test("a wire leads from its contact to the one at its other end", () => {
    expect(press(contact("X1.A4"), "w", "w")).toEqual(contact("X2.1"));
    expect(press(contact("X1.A4"), "ArrowRight", "ArrowRight")).toEqual(contact("X2.1"));
    expect(press(contact("X1.A4"), "w", "Escape")).toEqual(contact("X1.A4"));
  });
  test("several wires of one contact are gone through with up and down", () => {
    expect(press(contact("X1.A4"), "w", "ArrowDown", "w")).toEqual(contact("X2.2"));
    expect(press(contact("X1.A4"), "w", "ArrowUp", "w")).toEqual(contact("X2.2"));
  });
  test("a loose end leads nowhere, and a bare contact has no wire to follow", () => {
    expect(press(contact("X1.A8"), "w", "w")).toBeNull();
    expect(press(contact("X1.A7"), "w")).toBeNull();
  });
  test("while a lead is drawn, sideways goes to the nearest contact of the next part", () => {
    expect(moveByKey(view, contact("X1.A8"), "ArrowRight", true)).toEqual(contact("X2.3"));
  });
  test("every contact is reached from its part by arrows alone", () => {
    for (const { part, shape } of view.scene.parts.values()) {
      const seen = new Set<number>();
      let now = press({ level: "part", part: part.id }, "Enter");
      while (now?.level === "contact") {
        seen.add(now.ref.contact);
        now = press(now, "ArrowDown");
      }
      expect(seen.size).toBe(new Set(shape.ports.map((port) => port.contact)).size);
    }
  });
});

test("cursor and selection say the same thing", () => {
  const wire = Object.values(harness.wires)[0]!;
  for (const cursor of [
    { level: "none" },
    x1,
    contact("X1.A7"),
    { level: "wire", wire: wire.id, from: built.at("X1.A4") },
  ] as const) {
    expect(cursorOf(selectionOf(cursor))).toEqual(cursor);
  }
});
