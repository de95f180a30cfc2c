import { expect, test } from "vitest";
import { ISO_10487_A, RECEIVER_FLYING_LEADS } from "../../../src/catalogue/pinouts.ts";
import { readyOfKept, readyOfPinout } from "../../../src/catalogue/ready.ts";
import { addConnector, emptyDraft, fromReady } from "../../../src/editor/housing/new-connector.ts";
import { apply } from "../../../src/graph/edits/apply.ts";
import type { Connector, Harness } from "../../../src/graph/harness.ts";
import { emptyHarness } from "../../../src/graph/make.ts";
import { keepConnector } from "../../../src/graph/own-connector/kept-connector.ts";
import { makeScene } from "../../../src/layout/scene.ts";
import { readRows } from "../../../src/match/read-rows.ts";

type Draft = Parameters<typeof addConnector>[2];

function added(harness: Harness, changes: Partial<Draft>, at: { x: number; y: number } | null = null) {
  const draft = { ...emptyDraft(harness, "vehicle"), view: "wire-side" as const, count: "4", ...changes };
  const result = addConnector(harness, makeScene(harness), draft, at);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  const next = apply(harness, result.edit);
  if (!next.ok) throw new Error(next.why);
  const part = next.harness.parts[result.part] as Connector;
  return { harness: next.harness, part, place: next.harness.layout.places[part.id]! };
}

test("nothing that matters is filled in for a person", () => {
  const harness = emptyHarness();
  const result = addConnector(harness, makeScene(harness), emptyDraft(harness, null), null);
  expect(result).toMatchObject({ ok: false });
  expect(!result.ok && Object.keys(result.problems).sort()).toEqual(["count", "side", "view"]);
});

test("cavities are counted, numbered and set out in rows", () => {
  const { part } = added(emptyHarness(), { count: "8", rows: "2", view: "mating-face" });
  expect(part).toMatchObject({
    designation: "X1",
    view: "mating-face",
    belongsTo: { side: "vehicle" },
    rows: [
      [1, 2, 3, 4],
      [5, 6, 7, 8],
    ],
  });
  expect(part.cavities.map((cavity) => cavity.label)).toEqual(["1", "2", "3", "4", "5", "6", "7", "8"]);
});

test("pasted rows become cavities; one without a label gets a free number", () => {
  const rows = readRows("Pin\tSignal\n2\tACC\n\tGround").rows.map((row) => row.cavity);
  const { part } = added(emptyHarness(), { cavities: rows });
  expect(part.cavities.map(({ label, function: name }) => [label, name])).toEqual([
    ["2", "switched-feed"],
    ["1", "ground"],
  ]);
});

test.each([
  ["count", "0"],
  ["count", "2001"],
  ["count", "2.5"],
  ["count", "many"],
  ["rows", "0"],
  ["designation", " "],
] as const)("%s of %j is refused beside its field", (key, text) => {
  const harness = emptyHarness();
  const draft: Draft = { ...emptyDraft(harness, "vehicle"), view: "wire-side", count: "4", [key]: text };
  const result = addConnector(harness, makeScene(harness), draft, null);
  expect(!result.ok && Object.keys(result.problems)).toEqual([key]);
});

test("a designation is not given twice", () => {
  const { harness } = added(emptyHarness(), {});
  expect(() => added(harness, { designation: "X1" })).toThrow(/Another one is called X1/);
});

test("vehicle left, equipment right, none over another", () => {
  const one = added(emptyHarness(), {});
  const two = added(one.harness, { side: "equipment" });
  const three = added(two.harness, { side: "vehicle" });
  expect(two.place.x).toBeGreaterThan(one.place.x + 200);
  expect(three.place.x).toBe(one.place.x);
  expect(three.place.y).toBeGreaterThan(one.place.y + 100);
});

test("where a place was pointed at it goes there and stays", () => {
  expect(added(emptyHarness(), {}, { x: 64, y: 80 }).place).toMatchObject({ x: 64, y: 80, pinned: true });
});

test("a usual pinout is turned about for the vehicle, and mirrored for the other view", () => {
  const own = fromReady(readyOfPinout(ISO_10487_A), "equipment", "wire-side");
  const vehicle = fromReady(readyOfPinout(ISO_10487_A), "vehicle", "mating-face");
  expect(own.face).toEqual([
    [1, 3, 5, 7],
    [2, 4, 6, 8],
  ]);
  expect(vehicle.face).toEqual([
    [7, 5, 3, 1],
    [8, 6, 4, 2],
  ]);
  expect(own.cavities[3]).toMatchObject({ label: "A4", function: "constant-feed", direction: "takes" });
  expect(vehicle.cavities[3]).toMatchObject({ label: "A4", direction: "gives", lead: null });
  const { part } = added(emptyHarness(), vehicle);
  expect(part).toMatchObject({ shell: "ISO 10487 A", chart: { measured: false } });
  expect(part.cavities).toHaveLength(8);
});

test("flying leads come as flying leads", () => {
  const { part } = added(
    emptyHarness(),
    fromReady(readyOfPinout(RECEIVER_FLYING_LEADS), "equipment", "wire-side"),
  );
  expect(part).toMatchObject({ form: "flying-leads", shell: null });
  expect(part.cavities[4]).toMatchObject({ label: "BU/WH", function: "amplifier-turn-on" });
});

test("a connector that was kept comes back as it was, in another harness", () => {
  const { part: first } = added(emptyHarness(), {
    ...fromReady(readyOfPinout(ISO_10487_A), "vehicle", "mating-face"),
    view: "mating-face",
  });
  const known = {
    ...first,
    keying: "black",
    gender: "receptacle" as const,
    note: "behind the shelf",
    chart: { title: "Workshop sheet 12", edition: "B", date: "", measured: true },
  };
  const ready = readyOfKept("k1", keepConnector(known, "Wren, radio"));
  const { part } = added(emptyHarness(), {
    ...fromReady(ready, "vehicle", "mating-face"),
    view: "mating-face",
  });
  const { id: _id, designation: _designation, name: _name, ...same } = known;
  expect(part).toMatchObject(same);
  const { part: turned } = added(emptyHarness(), {
    ...fromReady(ready, "equipment", "wire-side"),
    side: "equipment",
    view: "wire-side",
  });
  expect(turned.rows[0]).toEqual([...known.rows[0]!].reverse());
  expect(turned.cavities[3]).toMatchObject({ direction: "takes", function: "constant-feed" });
});
