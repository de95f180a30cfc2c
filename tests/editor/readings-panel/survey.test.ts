import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import {
  previewOf,
  scopesFor,
  sizesView,
  withinScope,
} from "../../../src/editor/readings/panel/sizes-model.ts";
import { wholeView } from "../../../src/editor/readings/panel/whole-model.ts";
import { isKnown } from "../../../src/electrical/figure.ts";
import { apply } from "../../../src/graph/edits/apply.ts";
import type { Harness, PartId, WireId } from "../../../src/graph/harness.ts";
import { edit, startHistory, undo } from "../../../src/graph/history.ts";
import { parse } from "../../../src/graph/parse/parse.ts";

function sample(id: string): Harness {
  const read = parse(readFileSync(new URL(`../../../samples/${id}.harness.json`, import.meta.url), "utf8"));
  if (!read.ok) throw new Error(`the sample ${id} cannot be read`);
  return read.harness;
}

const sound = sample("amplified-sound");
const wireId = (name: string): WireId =>
  Object.values(sound.wires).find(({ designation }) => designation === name)!.id;
const partId = (name: string): PartId =>
  Object.values(sound.parts).find(({ designation }) => designation === name)!.id;
const NONE = { parts: new Set<PartId>(), wires: new Set<WireId>() };

describe("sizes", () => {
  const view = sizesView(sound, false);

  test("taken as a whole they leave nothing to grow, and one undo takes them back", () => {
    const taken = edit(startHistory(sound), view.edit!);
    if (!taken.ok) throw new Error(taken.why);
    const after = sizesView(taken.history.present, false);
    expect(after.wires.filter(({ changes }) => changes)).toEqual([]);
    expect(after.edit).toBeNull();
    expect(undo(taken.history).present).toBe(sound);
  });

  test("the preview says each change, and what the edit makes is what the row proposes", () => {
    const lines = previewOf(sound, view.edit!);
    const made = apply(sound, view.edit!);
    if (!made.ok) throw new Error(made.why);
    const changed = view.wires.filter(({ changes }) => changes);
    expect(changed.length).toBeGreaterThan(0);
    for (const row of changed) {
      expect(lines).toContain(`${row.name}: ${row.now} → ${row.proposed}`);
      expect(`${made.harness.wires[row.wire]!.area_mm2} mm²`).toBe(row.proposed);
    }
    for (const fuse of view.fuses.filter(({ changes }) => changes))
      expect(lines).toContain(`${fuse.name}: ${fuse.now} → ${fuse.proposed!.rating}`);
  });

  test("a fuse is proposed with the colour of its blade", () => {
    // 60 A maxi blades are blue: ISO 8820-3 type E, colours from one catalogue.
    expect(view.fuses[0]!.proposed).toEqual({ rating: "60 A", colour: "blue" });
  });

  test("one wire, and the way of one load, are sized by themselves", () => {
    const wires = new Set([wireId("W2")]);
    const choices = scopesFor(sound, view, { ...NONE, wires });
    expect(choices.map(({ name }) => name)).toEqual([
      "The whole harness",
      "W2 alone",
      expect.stringMatching(/^The way to A2\..* and back$/),
    ]);
    const alone = withinScope(view, choices[1]!.scope);
    expect(alone.wires.map(({ name }) => name)).toEqual(["W2"]);
    expect(alone.edit).toMatchObject({
      name: "size 1 wire",
      edits: [{ kind: "change-wire", wire: wireId("W2") }],
    });
    const way = withinScope(view, choices[2]!.scope);
    expect(way.wires.map(({ name }) => name)).toEqual(expect.arrayContaining(["W1", "W2", "W3"]));
    expect(scopesFor(sound, view, NONE)).toHaveLength(1);
    expect(scopesFor(sound, view, { ...NONE, parts: new Set([partId("A2")]) }).length).toBeGreaterThan(1);
  });

  test("what is thicker than it need be is made thinner only when asked", () => {
    const lamps = sample("work-lamp-relay");
    expect(sizesView(lamps, false).edit).toBeNull();
    const shrunk = sizesView(lamps, true);
    expect(shrunk.wires.some(({ changes }) => changes)).toBe(true);
    expect(previewOf(lamps, shrunk.edit!).length).toBeGreaterThan(0);
  });

  test("a worker can send it", () => {
    expect(structuredClone(view)).toEqual(view);
  });
});

describe("the whole harness", () => {
  const view = wholeView(sound);

  test("drains add up to their total", () => {
    const total = view.standby.lines.find(({ id }) => id === "total")!.answer;
    if (!isKnown(total)) throw new Error(total.unknown);
    const sum = view.standby.rows.reduce((all, row) => all + Number(row.drain.replace(" mA", "")), 0);
    expect(sum).toBeCloseTo(total.value, 6);
  });

  test("every channel that drives a speaker has what it sees and how it is poled", () => {
    const driven = view.channels.filter(({ lines }) => lines.length > 1);
    expect(driven).toHaveLength(4);
    for (const channel of driven) expect(channel.polarity).toBe("Plus on plus.");
  });

  test("a bundle is drawn as its wires, inside its circle", () => {
    const { section } = view.bundles.find(({ count }) => count === "9 wires")!;
    expect(section!.circles).toHaveLength(9);
    for (const { x_mm, y_mm, diameter_mm } of section!.circles)
      expect(Math.hypot(x_mm, y_mm) + diameter_mm / 2).toBeLessThanOrEqual(section!.diameter_mm / 2 + 1e-9);
  });

  test("lengths: each size is totalled, and a price makes a cost", () => {
    const sum = view.lengths.bySize.reduce((all, { count }) => all + count, 0);
    expect(sum + view.lengths.unknown).toBe(Object.keys(sound.wires).length);
    expect(view.lengths.cost).toBeNull();
    const { settings } = sound;
    const priced = {
      ...sound,
      settings: {
        ...settings,
        electrical: { ...settings.electrical, currency: "EUR", prices: [{ area_mm2: 10, perMetre: 2 }] },
      },
    };
    expect(wholeView(priced).lengths.cost).toMatch(/^\d+\.\d\d EUR$/);
  });

  test("a worker can send it", () => {
    expect(structuredClone(view)).toEqual(view);
  });

  test("an empty harness is told of too", () => {
    const empty = { ...sound, parts: {}, wires: {}, runs: {}, cables: {} };
    expect(wholeView(empty)).toMatchObject({ channels: [], bundles: [], turnOns: [], branches: [] });
    expect(sizesView(empty, true)).toMatchObject({ wires: [], fuses: [], edit: null });
  });
});
