import { describe, expect, test } from "vitest";
import { cavityFields } from "../../../src/editor/inspector/cavity-fields.ts";
import { isStated, tickedWords, voltsField } from "../../../src/editor/inspector/fields.ts";
import { runFields, vehicleFields } from "../../../src/editor/inspector/harness-fields.ts";
import { HAZARDS } from "../../../src/editor/inspector/hazards.ts";
import { partFields } from "../../../src/editor/inspector/part-fields.ts";
import { commonFields } from "../../../src/editor/inspector/several-model.ts";
import { metalFields } from "../../../src/editor/inspector/wire-fields.ts";
import type { Cavity, Module, Part, PartId, Run, RunId } from "../../../src/graph/harness.ts";
import { emptyHarness, makeCavity, makePart, makeRun } from "../../../src/graph/make.ts";
import { run as runShape } from "../../../src/graph/schema/harness.ts";
import { hazard, part as partShape } from "../../../src/graph/schema/parts.ts";

type Shape = { readonly def: { readonly entries?: Readonly<Record<string, string>> } };
const entriesOf = (shape: unknown) => (shape as Shape).def.entries;

test("every choice offers all that the format allows, and nothing else", () => {
  let seen = 0;
  for (const option of partShape.def.options) {
    const kind = option.shape.kind.def.values[0]!;
    const shapes = option.shape as Readonly<Record<string, unknown>>;
    const kinds: readonly object[] =
      kind === "splice"
        ? [{ method: "crimped-butt" }, { method: "bullet-pair" }]
        : kind === "load"
          ? [{ type: "camera" }]
          : kind === "connector"
            ? [{ form: "line-plug" }]
            : [{}];
    for (const known of kinds) {
      const part = makePart(kind, "p:1" as PartId, "Z1", known) as Part;
      for (const field of partFields(emptyHarness(), part)) {
        const entries = entriesOf(shapes[field.key]);
        if (field.look !== "choice" || !entries) continue;
        seen++;
        expect(field.choices?.map(([value]) => value).sort(), `${kind} ${field.key}`).toEqual(
          Object.values(entries).sort(),
        );
      }
    }
  }
  expect(seen).toBeGreaterThan(30);
  for (const field of runFields(emptyHarness(), makeRun("r:1" as RunId, "R1"))) {
    const entries = entriesOf(runShape.shape[field.key as keyof typeof runShape.shape]);
    if (field.look === "choice")
      expect(field.choices?.map(([value]) => value).sort(), field.key).toEqual(
        Object.values(entries!).sort(),
      );
  }
  expect([...HAZARDS].sort()).toEqual(Object.values(entriesOf(hazard)!).sort());
});

describe("asked only of", () => {
  const keys = (part: object) => partFields(emptyHarness(), part as Part).map((field) => field.key);
  const splice = (known: object) => keys(makePart("splice", "p:1" as PartId, "XJ1", known));

  test("a crimp, the colour of its barrel; a bullet pair, its live half", () => {
    expect(splice({})).not.toContain("barrel");
    expect(splice({ method: "crimped-butt" })).toContain("barrel");
    expect(splice({ method: "bullet-pair" })).toContain("liveHalf");
    expect(splice({ method: "bullet-pair" })).not.toContain("barrel");
  });
  test("what has a picture, its kind", () => {
    const load = (known: object) => keys(makePart("load", "p:1" as PartId, "E1", known));
    expect(load({ type: "motor" })).not.toContain("video");
    expect(load({ type: "camera" })).toContain("video");
    const box = (role: Module["role"], video: Module["video"] = "unknown") =>
      keys(makePart("module", "p:1" as PartId, "A1", { role, video }));
    expect(box("amplifier")).not.toContain("video");
    expect(box("display")).toContain("video");
  });
  test("but what is stated stays in sight, whatever else changes", () => {
    expect(splice({ method: "tap", barrel: "red", liveHalf: "bare" })).toEqual(
      expect.arrayContaining(["barrel", "liveHalf"]),
    );
    expect(keys(makePart("load", "p:1" as PartId, "E1", { type: "lamp", video: "pal" }))).toContain("video");
    expect(keys(makePart("module", "p:1" as PartId, "A1", { role: "amplifier", video: "ntsc" }))).toContain(
      "video",
    );
  });
  test("a cavity that gives, how; one that takes, on what it acts", () => {
    const cavity = (known: Partial<Cavity>) =>
      cavityFields(
        makePart("module", "p:1" as PartId, "A1", { cavities: [makeCavity("1", known)] }),
        0,
        "metric",
      ).more.map((field) => field.key);
    expect(cavity({ direction: "gives" })).toContain("gives");
    expect(cavity({ direction: "gives" })).not.toContain("actsOn");
    expect(cavity({ direction: "takes" })).toContain("actsOn");
    expect(cavity({ direction: "takes" })).not.toContain("gives");
    expect(cavity({})).toEqual(expect.arrayContaining(["gives", "actsOn"]));
    expect(cavity({ direction: "takes", gives: "pulsed" })).toContain("gives");
  });
});

describe("volts from and to", () => {
  const field = voltsField("voltage_V", "Works at", { least_V: 9, most_V: 16 });
  test("are written as they are read", () => {
    expect(field.text).toBe("9 to 16");
    expect(field.read(field.text)).toEqual({ ok: true, value: { least_V: 9, most_V: 16 } });
  });
  test.each([
    ["10,5-30", { ok: true, value: { least_V: 10.5, most_V: 30 } }],
    ["9 V … 16 V", { ok: true, value: { least_V: 9, most_V: 16 } }],
    ["9–16V", { ok: true, value: { least_V: 9, most_V: 16 } }],
    [" ", { ok: true, value: "unknown" }],
    ["12", { ok: false }],
    ["16 to 9", { ok: false }],
    ["0 to 0", { ok: false }],
    ["9 to 2000", { ok: false }],
    ["-9 to 16", { ok: false }],
  ])("%j", (text, read) => {
    expect(field.read(text)).toMatchObject(read);
  });
});

describe("what a thing stands near", () => {
  const near = (known: Module["near"]) =>
    partFields(emptyHarness(), makePart("module", "p:1" as PartId, "A1", { near: known })).find(
      (field) => field.key === "near",
    )!;
  test("is ticked in the order of the list", () => {
    expect(near(["heat", "airbag"]).read("drivers-sight heat airbag")).toEqual({
      ok: true,
      value: ["airbag", "heat", "drivers-sight"],
    });
    expect(near(["heat"]).read("")).toEqual({ ok: true, value: [] });
  });
  test("is said in words while the list is closed", () => {
    expect(tickedWords(near([]))).toBe("nothing stated");
    expect(tickedWords(near(["heat", "pedals"]))).toBe("exhaust or other heat, pedals or steering column");
    expect([near([]), near(["heat"])].map(isStated)).toEqual([false, true]);
  });
  test("is not offered for several that differ: one tick would wipe the others'", () => {
    const fields = (...lists: Module["near"][]) =>
      commonFields(lists.map((list) => ({ kind: "module", fields: [near(list)] }))).length;
    expect(fields(["heat"], ["airbag"])).toBe(0);
    expect(fields(["heat"], ["heat"])).toBe(1);
  });
});

test("a run at a door asks first how it crosses the hinge; elsewhere that stands under More", () => {
  const hinge = (zone: Run["zone"]) =>
    runFields(emptyHarness(), makeRun("r:1" as RunId, "R1", { zone })).find((field) => field.key === "hinge");
  expect(hinge("door")?.more).toBe(false);
  expect(hinge("cabin")?.more).toBe(true);
});

test("every field of a run, a wire and the vehicle has its place, and takes back what it shows", () => {
  const run = makeRun("r:1" as RunId, "R1", {
    near: ["heat"],
    support_m: 0.35,
    bend_mm: 40,
    dripLoop: "yes",
    passes: [{ what: "bulkhead", protection: "grommet" }],
  });
  const fields = runFields(emptyHarness(), run);
  for (const key of Object.keys(run).filter((key) => key !== "id")) {
    const field = fields.find((one) => one.key === key);
    expect(field?.read(field.text), key).toEqual({ ok: true, value: run[key as keyof Run] });
  }
  expect(fields.find(({ key }) => key === "support_m")?.read("35 cm")).toEqual({ ok: true, value: 0.35 });
  const harness = emptyHarness();
  const vehicle = vehicleFields(harness);
  expect(vehicle.map(({ key }) => key)).toEqual(Object.keys(harness.settings.vehicle));
  const wire = metalFields({ material: "cca-15", strands: "solid" });
  expect(wire.map(({ key, text }) => [key, text])).toEqual([
    ["material", "cca-15"],
    ["strands", "solid"],
  ]);
});
