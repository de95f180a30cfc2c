import { describe, expect, test } from "vitest";
import { contactsOf } from "../../src/graph/contacts.ts";
import type { Harness, Part, WireId } from "../../src/graph/harness.ts";
import { emptyHarness, makeCavity, makePart, makePlace, makeWire } from "../../src/graph/make.ts";
import type { Primitive } from "../../src/layout/drawing.ts";
import { SMALL_TEXT } from "../../src/layout/geometry/caption.ts";
import { cavityText, shapesOf } from "../../src/layout/scene.ts";
import { boundsOf } from "../../src/sheets/bounds.ts";
import { drawPart } from "../../src/sheets/part-drawing/draw-part.ts";
import { differsFromWanted } from "../../src/sheets/part-drawing/switch-bank.ts";
import { everyPart } from "./every-part.ts";
import { textsIn, wordsIn } from "./texts.ts";

/** Half the width of an outline: it is drawn on the edge. */
const LINE = 1.5;

/** A harness of one part with so many wires on each of its contacts. */
function alone(part: Part, wiresEach: number, turned: boolean): Harness {
  const wires: Record<WireId, ReturnType<typeof makeWire>> = {};
  for (const contact of contactsOf(part)) {
    for (let i = 0; i < wiresEach; i++) {
      const id = `w:${contact.number}-${i}` as WireId;
      wires[id] = makeWire(id, id.slice(2), [{ part: part.id, contact: contact.number }, "loose"]);
    }
  }
  const places = { [part.id]: makePlace(0, 0, true, turned) };
  return { ...emptyHarness(), parts: { [part.id]: part }, wires, layout: { places, paths: {} } };
}

function drawn(part: Part, wiresEach = 1, turned = false) {
  const harness = alone(part, wiresEach, turned);
  const shape = shapesOf(harness).get(part.id)!;
  return { items: drawPart({ part, shape, turned }, { harness }), shape };
}

const cases = everyPart().flatMap((part) =>
  [0, 1, 3].flatMap((wires) =>
    [false, true].map((turned) => ({ part, wires, turned, name: `${part.designation} ${part.kind}` })),
  ),
);

describe("drawPart", () => {
  test.each(cases)("$name with $wires wires a contact, turned $turned, stays inside its outline", (one) => {
    const { items, shape } = drawn(one.part, one.wires, one.turned);
    const bounds = boundsOf(items)!;
    expect(bounds.x).toBeGreaterThanOrEqual(-LINE);
    expect(bounds.y).toBeGreaterThanOrEqual(-LINE);
    expect(bounds.x + bounds.width).toBeLessThanOrEqual(shape.width + LINE);
    expect(bounds.y + bounds.height).toBeLessThanOrEqual(shape.height + LINE);
  });

  test.each(cases)("$name with $wires wires a contact, turned $turned, meets every port", (one) => {
    const { items, shape } = drawn(one.part, one.wires, one.turned);
    if (one.part.kind === "connector" || one.part.kind === "module") return;
    const ends = items.flatMap((item) =>
      item.kind === "line" ? [[item.x1, item.y1] as const, [item.x2, item.y2] as const] : [],
    );
    for (const port of shape.ports) {
      expect(ends.some(([x, y]) => Math.abs(x - port.x) < 0.01 && Math.abs(y - port.y) < 0.01)).toBe(true);
    }
  });

  test.each(everyPart())("$designation $kind says its designation, in text that can be read", (part) => {
    const { items } = drawn(part);
    expect(wordsIn(items)).toContain(part.designation);
    for (const text of textsIn(items)) expect(text.size).toBeGreaterThanOrEqual(SMALL_TEXT);
  });

  test.each(everyPart().filter((part) => part.kind === "connector" || part.kind === "module"))(
    "$designation: every cavity's label, function, letters and use stand in the drawing",
    (part) => {
      if (part.kind !== "connector" && part.kind !== "module") throw new Error("not a housing");
      const words = wordsIn(drawn(part).items);
      for (const cavity of part.cavities.filter(({ label }) => label !== "long label")) {
        expect(words).toContain(cavity.label);
        expect(words).toContain(cavityText(cavity));
        if (cavity.use !== "expected") expect(words).toContain(cavity.use);
      }
      if (part.cavities.length > 0) expect(words).toContain("RD/YE");
    },
  );

  test("the stated view stands in words, and the other view in other words", () => {
    const view = (from: "mating-face" | "wire-side") =>
      wordsIn(drawn(makePart("connector", "p:1" as Part["id"], "X1", { view: from }) as Part).items);
    expect(view("mating-face")).toContain("seen from mating face");
    expect(view("wire-side")).toContain("seen from wire side");
  });

  test("gives and takes, and both, differ without their colours", () => {
    const marks = (["gives", "takes", "both", "none"] as const).map((direction) => {
      const part = makePart("connector", "p:1" as Part["id"], "X1", {
        cavities: [makeCavity("1", { direction })],
      }) as Part;
      return JSON.stringify(drawn(part).items.map((item) => (item.kind === "path" ? item.commands : null)));
    });
    expect(new Set(marks).size).toBe(4);
  });

  test("joints of every kind differ in shape and in letter", () => {
    const bodies = everyPart().filter((part) => part.kind === "splice" || part.kind === "cap");
    const shapes = bodies.map((part) => {
      const shapesOnly = drawn({ ...part, designation: "" }).items.map(withoutInk);
      return part.kind + JSON.stringify(shapesOnly);
    });
    expect(new Set(shapes).size).toBe(bodies.length);
  });

  test("a switch that stands as its chart wants is not marked; any other is", () => {
    const at = (position: "on" | "off" | "unset", wanted: "on" | "off" | "either" | "unknown") =>
      differsFromWanted({ label: "1", position, wanted, meaning: "" });
    expect([at("on", "on"), at("off", "off"), at("off", "either"), at("unset", "unknown")]).toEqual([
      false,
      false,
      false,
      false,
    ]);
    expect([at("on", "off"), at("off", "on"), at("unset", "on"), at("unset", "off")]).toEqual([
      true,
      true,
      true,
      true,
    ]);
  });

  test("a switch's position is told by where its slider stands and by its word", () => {
    const bank = (position: "on" | "off" | "unset") => {
      const switches = [{ label: "1", position, wanted: "unknown", meaning: "" } as const];
      return drawn(makePart("module", "p:1" as Part["id"], "A1", { switches }) as Part).items;
    };
    const slider = (items: readonly Primitive[]) =>
      items.find((item) => item.kind === "rectangle" && item.width === 8);
    const heights = (["on", "unset", "off"] as const).map((position) => {
      const found = slider(bank(position));
      return found?.kind === "rectangle" ? found.y : Number.NaN;
    });
    expect(heights[0]).toBeLessThan(heights[1]!);
    expect(heights[1]).toBeLessThan(heights[2]!);
    expect(wordsIn(bank("on"))).toContain("on");
    expect(wordsIn(bank("off"))).toContain("off");
    expect(wordsIn(bank("unset"))).toContain("–");
  });

  test("long and hostile texts stay inside", () => {
    const hostile = '"><script>alert(1)</script>\u202e\u0000'.repeat(20);
    const cavities = [makeCavity(hostile, { text: hostile, use: "spare" })];
    for (const part of [
      makePart("connector", "p:1" as Part["id"], hostile, { name: hostile, cavities }) as Part,
      makePart("fuse", "p:2" as Part["id"], hostile, { name: hostile }) as Part,
      makePart("splice", "p:3" as Part["id"], hostile) as Part,
      makePart("relay", "p:4" as Part["id"], hostile, { name: hostile }) as Part,
      makePart("load", "p:5" as Part["id"], hostile, { name: hostile }) as Part,
    ]) {
      const { items, shape } = drawn(part);
      const bounds = boundsOf(items)!;
      expect(bounds.x).toBeGreaterThanOrEqual(-LINE);
      expect(bounds.x + bounds.width).toBeLessThanOrEqual(shape.width + LINE);
    }
  });
});

function withoutInk(item: Primitive): unknown {
  return item.kind === "text" ? item.text : { ...item, stroke: null, fill: null };
}
