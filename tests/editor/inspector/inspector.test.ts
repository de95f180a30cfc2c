import { describe, expect, test } from "vitest";
import { canMake, makeCable } from "../../../src/editor/inspector/cable-edits.ts";
import { cavityFields, countChanges } from "../../../src/editor/inspector/cavity-fields.ts";
import { choiceField, type Field, figureField } from "../../../src/editor/inspector/fields.ts";
import { runFields } from "../../../src/editor/inspector/harness-fields.ts";
import { belongsFields, partFields } from "../../../src/editor/inspector/part-fields.ts";
import { commonFields, sameOf } from "../../../src/editor/inspector/several-model.ts";
import { wireFields } from "../../../src/editor/inspector/wire-fields.ts";
import { apply } from "../../../src/graph/edits/apply.ts";
import type { Edit } from "../../../src/graph/edits/edit.ts";
import type { Connector, Part, PartId, PartKind, RunId, WireId } from "../../../src/graph/harness.ts";
import { emptyHarness, makePart, makeRun } from "../../../src/graph/make.ts";
import { build } from "../../build.ts";

const KINDS: readonly PartKind[] = [
  "connector",
  "splice",
  "cap",
  "ground",
  "supply",
  "fuse",
  "relay",
  "switch",
  "diode",
  "resistor",
  "capacitor",
  "load",
  "speaker",
  "module",
];

describe.each(KINDS)("a fresh %s", (kind) => {
  const part = makePart(kind, "p:1" as PartId, "Z1", {}) as Part;
  const harness = { ...emptyHarness(), parts: { ["p:1" as PartId]: part } };

  test("has no field that its own value does not fit", () => {
    for (const field of partFields(harness, part)) {
      const read = field.read(field.text);
      expect(read, field.name).toMatchObject({ ok: true });
      if (!read.ok) continue;
      const edit: Edit = { kind: "change-part", part: part.id, changes: { [field.key]: read.value } };
      const result = apply(harness, edit);
      expect(result.ok && result.harness.parts[part.id], field.name).toEqual(part);
    }
  });

  test("takes every choice it offers", () => {
    for (const field of partFields(harness, part)) {
      for (const [value] of field.choices ?? []) {
        const read = field.read(value);
        const changes = { [field.key]: read.ok ? read.value : null };
        expect(apply(harness, { kind: "change-part", part: part.id, changes }), field.name).toMatchObject({
          ok: true,
        });
      }
    }
  });

  test("has every field that its kind has besides those with editors of their own", () => {
    const own = new Set([
      "id",
      "kind",
      "belongsTo",
      "view",
      "rows",
      "cavities",
      "chart",
      "matedWith",
      "switches",
    ]);
    const shown = new Set(partFields(harness, part).map((field) => field.key));
    // Asked only where the answer means something; see stated-fields.test.ts.
    if (kind === "connector") own.add("cover");
    if (kind === "splice") for (const key of ["barrel", "liveHalf"]) own.add(key);
    if (kind === "load") own.add("video");
    const left = Object.keys(part).filter((key) => !own.has(key) && !shown.has(key));
    expect(left).toEqual([]);
  });
});

describe("figures", () => {
  const field = figureField("rating_A", "Rating", 10, "A", { most: 1000 });
  test.each([
    ["", { ok: true, value: "unknown" }],
    ["7.5", { ok: true, value: 7.5 }],
    ["7,5", { ok: true, value: 7.5 }],
    ["15 A", { ok: true, value: 15 }],
    ["2000", { ok: false }],
    ["-1", { ok: false }],
    ["Infinity", { ok: false }],
    ["ten", { ok: false }],
  ])("%j", (text, read) => {
    expect(field.read(text)).toMatchObject(read);
  });
});

describe("cavities", () => {
  const { harness } = build().vehicle("X1", { A1: "constant-feed RD 1.5", A2: "ground" });
  const part = harness.parts["p:X1" as PartId] as Connector;
  const field = (name: string): Field => {
    const { row, more } = cavityFields(part, 0, "metric");
    return [...row, ...more].find((one) => one.name === name)!;
  };

  test("a function is read in a chart's words", () => {
    expect(field("Function").read("Batt")).toEqual({ ok: true, value: "constant-feed" });
    expect(field("Function").read("wobble")).toMatchObject({ ok: false });
  });
  test("colour and size change one lead and keep the other half", () => {
    expect(field("Lead colour").read("BU/WH")).toEqual({
      ok: true,
      value: { colour: { base: "BU", tracer: "WH" }, area_mm2: 1.5 },
    });
    expect(field("Size").read("")).toEqual({
      ok: true,
      value: { colour: { base: "RD", tracer: null }, area_mm2: "unknown" },
    });
  });
  test("a label is not given twice", () => {
    expect(field("Cavity").read("A2")).toMatchObject({ ok: false });
  });
  test("no fuse and an unknown one are two things", () => {
    expect(field("Fuse on the far side").read("none")).toEqual({ ok: true, value: null });
    expect(field("Fuse on the far side").read("")).toEqual({ ok: true, value: "unknown" });
  });
  test("more cavities get labels of their own; fewer keep the first", () => {
    const more = countChanges(part, "4");
    expect(more.ok && (more.value.cavities as { label: string }[]).map((one) => one.label)).toEqual([
      "A1",
      "A2",
      "3",
      "4",
    ]);
    const fewer = countChanges(part, "1");
    expect(fewer.ok && fewer.value.rows).toEqual([[1]]);
    expect(countChanges(part, "1.5")).toMatchObject({ ok: false });
    expect(countChanges(part, "2001")).toMatchObject({ ok: false });
  });
});

describe("cables", () => {
  const { harness } = build()
    .vehicle("X1", { 1: "can-high", 2: "can-low", 3: "data" })
    .wire("X1.1", "loose")
    .wire("X1.2", "loose")
    .wire("X1.3", "loose");
  const wires = ["w:W1", "w:W2", "w:W3"] as WireId[];
  const made = (edit: ReturnType<typeof makeCable>, from = harness) => {
    if ("ok" in edit) throw new Error(edit.why);
    const result = apply(from, edit);
    if (!result.ok) throw new Error(result.why);
    return result.harness;
  };

  test("a pair takes two wires", () => {
    expect(canMake("twisted-pair", 3)).toBe(false);
    expect(makeCable(harness, wires, "twisted-pair")).toMatchObject({ ok: false });
    expect(Object.values(made(makeCable(harness, wires.slice(0, 2), "twisted-pair")).cables)).toMatchObject([
      { designation: "WC1", kind: "twisted-pair", wires: ["w:W1", "w:W2"] },
    ]);
  });
  test("wires leave the cable they were in, and an empty cable goes", () => {
    const first = made(makeCable(harness, wires.slice(0, 2), "twisted-pair"));
    const second = made(makeCable(first, wires, "multicore"), first);
    expect(Object.values(second.cables)).toMatchObject([{ designation: "WC2", wires }]);
  });
});

describe("several", () => {
  test("fields whose values differ are empty and say so", () => {
    const { harness } = build().part("fuse", "F1", { rating_A: 10 }).part("fuse", "F2", { rating_A: 15 });
    const fields = commonFields(
      Object.values(harness.parts).map((part) => ({ kind: part.kind, fields: partFields(harness, part) })),
    );
    expect(fields.map((field) => [field.name, field.text, field.hint])).toEqual([
      ["Rating", "", "several"],
      ["Form", "unknown", undefined],
      ["Sits in", "unknown", undefined],
    ]);
  });
  test("things of two kinds have none", () => {
    const line = [choiceField("form", "Form", "mini", ["mini"])];
    expect(
      commonFields([
        { kind: "fuse", fields: line },
        { kind: "relay", fields: line },
      ]),
    ).toEqual([]);
    expect(sameOf([1, 2], (value) => value % 1)).toEqual({ same: true, value: 0 });
  });
});

test("a wire's end is written by name or loose", () => {
  const { harness } = build().vehicle("X1", { 1: "ground", 2: "ground" }).wire("X1.1", "loose");
  const field = wireFields(harness, harness.wires["w:W1" as WireId]!).find((one) => one.name === "To")!;
  expect(field.text).toBe("loose");
  expect(field.read("x1.2")).toEqual({
    ok: true,
    value: [
      { part: "p:X1", contact: 1 },
      { part: "p:X1", contact: 2 },
    ],
  });
  expect(field.read("X7.1")).toMatchObject({ ok: false });
});

test("what a run passes through is read and written back", () => {
  const run = makeRun("r:1" as RunId, "R1", { passes: [{ what: "bulkhead", protection: "grommet" }] });
  const field = runFields(emptyHarness(), run).find((one) => one.name === "Passes through")!;
  expect(field.text).toBe("bulkhead: grommet");
  expect(field.read("bulkhead: grommet; door")).toEqual({
    ok: true,
    value: [
      { what: "bulkhead", protection: "grommet" },
      { what: "door", protection: "unknown" },
    ],
  });
  expect(field.read("bulkhead: tape")).toMatchObject({ ok: false });
});

test("a connector can be given to a module of the harness, and taken back", () => {
  const { harness } = build().vehicle("X1", { 1: "ground" }).module("A1");
  const part = harness.parts["p:X1" as PartId] as Connector;
  const field = belongsFields(harness, part).find((one) => one.name === "Receptacle of")!;
  expect(field.choices?.map(([value]) => value)).toEqual(["", "p:A1"]);
  expect(field.read("p:A1")).toEqual({ ok: true, value: { side: "vehicle", module: "p:A1" } });
  expect(field.read("")).toEqual({ ok: true, value: { side: "vehicle", module: null } });
});
