import { describe, expect, test } from "vitest";
import type { Cable, CableId, Colour, WireId } from "../../src/graph/harness.ts";
import { makeWire } from "../../src/graph/make.ts";
import type { Primitive } from "../../src/layout/drawing.ts";
import { labelText, placeLabels } from "../../src/layout/label.ts";
import type { PlacedWire } from "../../src/layout/scene.ts";
import { boundsOf } from "../../src/sheets/bounds.ts";
import { drawCable, drawWires } from "../../src/sheets/cable-drawing.ts";
import { drawWire } from "../../src/sheets/wire-drawing.ts";
import { wordsIn } from "./texts.ts";

const STRAIGHT = [0, 0, 600, 0];

function placed(number: number, colour: Colour | null, path: readonly number[] = STRAIGHT): PlacedWire {
  const id = `w:${number}` as WireId;
  const wire = makeWire(id, `W${number}`, ["loose", "loose"], { colour, area_mm2: 0.75 });
  return { wire, path, labels: placeLabels(path, labelText(wire, "metric")), loose: null, circuit: 0 };
}

const strokes = (items: readonly Primitive[]) =>
  items.flatMap((item) => (item.kind === "path" && item.stroke ? [item.stroke.colour] : []));
const fills = (items: readonly Primitive[]) =>
  items.flatMap((item) => (item.kind === "path" && item.fill ? [item.fill] : []));

describe("drawWire", () => {
  test("an ink outline under the base colour, so that any colour shows on any ground", () => {
    for (const base of ["WH", "BK", "RD"] as const) {
      const items = drawWire(placed(1, { base, tracer: null }), { cable: null });
      expect(strokes(items)).toEqual(["ink", `wire:${base}`]);
      const widths = items.flatMap((item) =>
        item.kind === "path" && item.stroke ? [item.stroke.width] : [],
      );
      expect(widths[0]! - widths[1]!).toBeGreaterThanOrEqual(1);
    }
  });

  test("a tracer is stripes that stay within the insulation", () => {
    const items = drawWire(placed(1, { base: "BU", tracer: "WH" }), { cable: null });
    expect(fills(items)).toEqual(["wire:WH"]);
    const stripes = items.filter((item) => item.kind === "path" && item.fill === "wire:WH");
    const bounds = boundsOf(
      stripes.map((item) => ({ ...item, stroke: { colour: "ink", width: 0 } }) as Primitive),
    )!;
    expect(bounds.height).toBeLessThanOrEqual(3.2 + 1e-9);
    expect(bounds.width).toBeGreaterThan(500);
  });

  test("green-and-yellow carries its own tracer", () => {
    expect(fills(drawWire(placed(1, { base: "GNYE", tracer: null }), { cable: null }))).toEqual(["wire:YE"]);
  });

  test("a colour that nobody has stated is no colour of the table", () => {
    const items = drawWire(placed(1, null), { cable: null });
    expect(JSON.stringify(items)).not.toContain("wire:");
  });

  test("number, letters and size stand near both ends, on paper", () => {
    const items = drawWire(placed(12, { base: "BU", tracer: "WH" }), { cable: null });
    expect(wordsIn(items)).toEqual(["W12 BU/WH 0.75", "W12 BU/WH 0.75"]);
    const grounds = items.filter((item) => item.kind === "rectangle" && item.fill === "paper");
    expect(grounds).toHaveLength(2);
  });

  test("a loose end is an open ring where it hangs", () => {
    const items = drawWire({ ...placed(1, null), loose: { x: 600, y: 0 } }, { cable: null });
    expect(items).toContainEqual(expect.objectContaining({ kind: "circle", x: 600, y: 0, fill: "paper" }));
  });

  test("plain leaves the wire alone", () => {
    const items = drawWire(placed(1, { base: "BU", tracer: "WH" }), { cable: null, plain: true });
    expect(wordsIn(items)).toEqual([]);
    expect(fills(items)).toEqual([]);
  });

  test("thicker copper is drawn thicker", () => {
    const wide = (area_mm2: number) => {
      const one = placed(1, { base: "RD", tracer: null });
      return boundsOf(drawWire({ ...one, labels: [], wire: { ...one.wire, area_mm2 } }, { cable: null }))!
        .height;
    };
    expect(wide(0.5)).toBeLessThan(wide(2));
    expect(wide(2)).toBeLessThan(wide(4));
    expect(wide(4)).toBeLessThan(wide(25));
  });
});

describe("a twisted pair", () => {
  const bent = [0, 0, 500, 0, 500, 300, 900, 300];
  const beside = [0, 8, 492, 8, 492, 308, 900, 308];
  const a = { ...placed(1, { base: "YE", tracer: null }, bent), labels: [] };
  const b = { ...placed(2, { base: "GN", tracer: null }, beside), labels: [] };

  test("winds about its partner and keeps both ends", () => {
    const base = drawWire(a, { cable: null, partner: b })[1];
    if (base?.kind !== "path") throw new Error("no insulation");
    expect(base.commands[0]).toEqual(["M", 0, 0]);
    expect(base.commands.at(-1)).toEqual(["L", 900, 300]);
    const reached = base.commands.flatMap((command) => (command[0] === "C" ? [command[6]] : []));
    // It comes over to the other's track on the first piece and on the last.
    expect(reached).toContain(8);
    expect(reached).toContain(308);
  });

  test("the two cross: where one is on the other's track, the other is on its own", () => {
    const ends = (one: PlacedWire, other: PlacedWire) => {
      const item = drawWire(one, { cable: null, partner: other })[1];
      if (item?.kind !== "path") throw new Error("no insulation");
      return item.commands.flatMap((command) =>
        command[0] === "C" ? [[command[5], command[6]] as const] : [],
      );
    };
    const first = ends(a, b).filter(([x, y]) => y === 8 && x < 490);
    const second = ends(b, a);
    expect(first.length).toBeGreaterThan(0);
    for (const [x] of first) expect(second.some(([otherX, y]) => otherX === x && y === 0)).toBe(true);
  });

  test("nothing winds where the partner is elsewhere", () => {
    const far = { ...b, path: [0, 200, 900, 200] };
    expect(drawWire(a, { cable: null, partner: far })).toEqual(drawWire(a, { cable: null }));
  });

  test("never under a label", () => {
    const labelled = { ...a, labels: placeLabels(a.path, "W1 YE 0.35") };
    const item = drawWire(labelled, { cable: null, partner: b })[1];
    if (item?.kind !== "path") throw new Error("no insulation");
    const xs = item.commands.flatMap((command) =>
      command[0] === "C" && command[6] === 8 ? [command[5]] : [],
    );
    for (const label of labelled.labels.filter((one) => one.y === 0)) {
      for (const x of xs) expect(Math.abs(x - label.x)).toBeGreaterThan(label.width / 2);
    }
  });
});

describe("cables", () => {
  const cable = (kind: Cable["kind"], shield: WireId | null = null): Cable => ({
    id: "c:1" as CableId,
    designation: "C1",
    kind,
    wires: ["w:1" as WireId, "w:2" as WireId],
    shield,
    note: "",
  });
  const pair = [placed(1, null, [0, 0, 300, 0]), placed(2, null, [0, 8, 300, 8])];

  test("a shield is a dashed outline about all of its wires, its drain tied with a dot", () => {
    const items = drawCable(cable("shielded", "w:2" as WireId), pair);
    const outline = items.find((item) => item.kind === "rectangle");
    if (outline?.kind !== "rectangle") throw new Error("no outline");
    expect(outline.stroke?.dash?.length).toBeGreaterThan(0);
    expect(outline.y).toBeLessThan(0);
    expect(outline.y + outline.height).toBeGreaterThan(8);
    expect(items.some((item) => item.kind === "circle" && item.fill === "ink")).toBe(true);
  });

  test("a jacket is a plain outline; a twisted pair has none; wires apart have none", () => {
    const jacket = drawCable(cable("multicore"), pair)[0];
    expect(jacket?.kind === "rectangle" && jacket.stroke?.dash).toBeFalsy();
    expect(drawCable(cable("twisted-pair"), pair)).toEqual([]);
    expect(drawCable(cable("shielded"), [pair[0]!, placed(2, null, [0, 400, 300, 400])])).toEqual([]);
  });

  test("no wire is drawn over a label", () => {
    const wires = new Map(pair.map((one) => [one.wire.id, one]));
    const items = drawWires({ wires }, { cables: {} });
    const firstText = items.findIndex((item) => item.kind === "text");
    expect(items.slice(firstText).some((item) => item.kind === "path")).toBe(false);
    expect(wordsIn(items)).toHaveLength(4);
  });
});
