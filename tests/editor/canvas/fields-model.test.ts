import { describe, expect, test } from "vitest";
import {
  commitField,
  type Field,
  fieldAt,
  fieldBeside,
  fieldsOfPart,
  fieldsOfWire,
  functionFor,
} from "../../../src/editor/canvas/fields-model.ts";
import { contactSpot } from "../../../src/editor/canvas/nodes-model.ts";
import { makeScene } from "../../../src/layout/scene.ts";
import { adapter, adapterAt, edited, placedHarness } from "./a-harness.ts";

const { harness, scene } = adapterAt();
const x1 = scene.parts.get(adapter().at("X1.A4").part)!;
const field = (name: string): Field => {
  const found = fieldsOfPart(x1).find((one) => one.name === name);
  if (!found) throw new Error(`no field is called ${name}`);
  return found;
};

describe("commitField", () => {
  test("a function's name, or a word that charts use for it, states the function", () => {
    const next = edited(harness, commitField(harness, field("Function of X1.A8"), "Illumination"));
    expect(next.parts[x1.part.id]).toMatchObject({ cavities: { 2: { function: "illumination" } } });
    expect(functionFor("  N/C ")).toBe("not-used");
  });
  test("any other words are kept as the chart's own", () => {
    const next = edited(harness, commitField(harness, field("Function of X1.A8"), "dome lamp door side"));
    expect(next.parts[x1.part.id]).toMatchObject({
      cavities: { 2: { function: "unknown", text: "dome lamp door side" } },
    });
  });
  test("a colour is read in letters or words, and keeps the lead's size; nonsense is refused", () => {
    const next = edited(harness, commitField(harness, field("Lead colour of X1.A4"), "blue/white"));
    expect(next.parts[x1.part.id]).toMatchObject({
      cavities: { 0: { lead: { colour: { base: "BU", tracer: "WH" }, area_mm2: 1.5 } } },
    });
    expect(commitField(harness, field("Lead colour of X1.A4"), "sky")).toMatchObject({ ok: false });
  });
  test("the same text changes nothing; an empty designation is refused", () => {
    expect(commitField(harness, field("Designation of X1"), " X1 ")).toBeNull();
    expect(commitField(harness, field("Designation of X1"), " ")).toMatchObject({ ok: false });
  });
  test("a wire's label that is its number is no label of its own", () => {
    const wired = placedHarness(adapter().wire("X1.A4", "X2.1", null, { label: "feed" }).harness, {});
    const [wire] = Object.values(wired.wires);
    const [label] = fieldsOfWire(makeScene(wired).wires.get(wire!.id)!);
    expect(edited(wired, commitField(wired, label!, wire!.designation)).wires[wire!.id]!.label).toBe("");
  });
});

test("the field under a point is the text that is drawn there", () => {
  const port = contactSpot(scene, x1.part.id, 2)!;
  expect(fieldAt(scene, port.x - 16, port.y, x1.part.id)?.name).toBe("Cavity label of X1.A7");
  expect(fieldAt(scene, port.x - 60, port.y, x1.part.id)?.name).toBe("Lead colour of X1.A7");
  expect(fieldAt(scene, 12, port.y, x1.part.id)?.name).toBe("Function of X1.A7");
  expect(fieldAt(scene, 12, 16, x1.part.id)?.name).toBe("Designation of X1");
});

test("Tab goes through every field of a part and ends after the last", () => {
  let now: Field | null = fieldsOfPart(x1)[0]!;
  let count = 0;
  while (now) {
    count++;
    now = fieldBeside(scene, now, 1);
  }
  expect(count).toBe(2 + 3 * 4);
});

test("every field lies within its part", () => {
  for (const placed of scene.parts.values()) {
    for (const { box } of fieldsOfPart(placed)) {
      expect(box.x).toBeGreaterThanOrEqual(placed.x);
      expect(box.x + box.width).toBeLessThanOrEqual(placed.x + placed.shape.width);
      expect(box.y + box.height).toBeLessThanOrEqual(placed.y + placed.shape.height);
    }
  }
});
