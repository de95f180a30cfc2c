import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { assumptionRows } from "../../../src/editor/readings/panel/assumption-model.ts";
import { basisEdit, basisFields } from "../../../src/editor/readings/panel/basis-model.ts";
import { budgetsOf, budgetView } from "../../../src/editor/readings/panel/budget-model.ts";
import { type FigureLine, sayFigure, sayVolts } from "../../../src/editor/readings/panel/figure-line.ts";
import { contactRows } from "../../../src/editor/readings/panel/part-figures-model.ts";
import { figuresOf, subjectOf } from "../../../src/editor/readings/panel/selection-model.ts";
import { readWhatIf, sayWhatIf, slidersOf } from "../../../src/editor/readings/panel/what-if-model.ts";
import { AS_IT_IS } from "../../../src/editor/readings/readings-store.ts";
import { isKnown } from "../../../src/electrical/figure.ts";
import { conditionsOf } from "../../../src/electrical/operate/key-state.ts";
import { operate } from "../../../src/electrical/operate/operate.ts";
import type { Readings } from "../../../src/electrical/operate/readings.ts";
import { apply } from "../../../src/graph/edits/apply.ts";
import type { Harness, PartId, WireId } from "../../../src/graph/harness.ts";
import { parse } from "../../../src/graph/parse/parse.ts";
import { trace } from "../../../src/graph/trace.ts";

function sample(id: string): Harness {
  const read = parse(readFileSync(new URL(`../../../samples/${id}.harness.json`, import.meta.url), "utf8"));
  if (!read.ok) throw new Error(`the sample ${id} cannot be read`);
  return read.harness;
}

function readingsOf(harness: Harness, everything = true): Readings {
  const conditions = everything ? conditionsOf(harness) : [];
  return operate(harness, trace(harness), { key: "run", conditions });
}

const lamps = sample("work-lamp-relay");
const partId = (harness: Harness, name: string): PartId =>
  Object.values(harness.parts).find(({ designation }) => designation === name)!.id;
const wireId = (harness: Harness, name: string): WireId =>
  Object.values(harness.wires).find(({ designation }) => designation === name)!.id;
const select = (harness: Harness, name: string) => {
  const wires = name.startsWith("W") ? [wireId(harness, name)] : [];
  const parts = name.startsWith("W") ? [] : [partId(harness, name)];
  return subjectOf(harness, { wires: new Set(wires), parts: new Set(parts), contact: null });
};
const lines = (readings: Readings, name: string): readonly FigureLine[] =>
  figuresOf(readings, select(readings.solved.harness, name)).flatMap((group) => group.lines);

describe("the figures of a selection", () => {
  test("of a wire: what the readings hold, each with a formula and a source", () => {
    const readings = readingsOf(lamps);
    const found = lines(readings, "W8");
    const reading = readings.wires.get(wireId(lamps, "W8"))!;
    const value = (id: string) => {
      const answer = found.find((line) => line.id === id)!.answer;
      if (!isKnown(answer)) throw new Error(answer.unknown);
      return answer.value;
    };
    expect(value("current")).toBeCloseTo(Math.abs(reading.amps), 9);
    expect(value("drop")).toBeCloseTo(reading.drop_V, 9);
    expect(value("load")).toBeCloseTo(reading.percentOfAmpacity!, 6);
    expect(value("end-0") - value("end-1")).toBeCloseTo(reading.drop_V, 6);
    for (const { answer, name } of found) {
      expect(isKnown(answer) && answer.formula !== "" && answer.source !== "", name).toBe(true);
    }
  });

  test.each(
    ["work-lamp-relay", "amplified-sound", "interface-module", "wren-receiver-adapter-faults"].flatMap((id) =>
      [true, false].map((everything) => [id, everything] as const),
    ),
  )("of everything in %s: a finite number, or why there is none", (id, everything) => {
    const harness = sample(id);
    const readings = readingsOf(harness, everything);
    const names = [...Object.values(harness.parts), ...Object.values(harness.wires)];
    for (const { designation, id: thing } of names) {
      const subject = subjectOf(harness, {
        parts: new Set(thing in harness.parts ? [thing as PartId] : []),
        wires: new Set(thing in harness.wires ? [thing as WireId] : []),
        contact: null,
      });
      const ids = new Set<string>();
      for (const { lines: own } of figuresOf(readings, subject)) {
        for (const { id: key, answer } of own) {
          ids.add(key);
          if (isKnown(answer)) expect(Number.isFinite(answer.value), `${designation} ${key}`).toBe(true);
          else expect(answer.unknown).not.toBe("");
          expect(JSON.stringify(answer)).not.toContain("NaN");
        }
      }
      const count = figuresOf(readings, subject).flatMap((group) => group.lines).length;
      expect(ids.size, `${designation}: every figure has an id of its own`).toBe(count);
    }
  });

  test("of a load of which nobody has said what it draws: what is missing", () => {
    const id = partId(lamps, "E1");
    const silent = apply(lamps, { kind: "change-part", part: id, changes: { current_A: "unknown" } });
    if (!silent.ok) throw new Error(silent.why);
    const current = lines(readingsOf(silent.harness), "E1").find((line) => line.id === "current")!;
    expect(current.answer).toEqual({ unknown: expect.stringContaining("State what E1 draws") });
  });

  test("of a relay: the coil as the readings have it, in words", () => {
    const readings = readingsOf(lamps);
    expect(lines(readings, "K1")[0]).toMatchObject({ id: "coil-volts", remark: "pulled" });
    expect(lines(readingsOf(lamps, false), "K1")[0]).toMatchObject({ remark: "released" });
  });

  test("a joint's contacts carry what its wires bring", () => {
    const readings = readingsOf(lamps);
    const joint = lamps.parts[partId(lamps, "XJ2")]!;
    const most = Math.max(...contactRows(readings, joint).map((row) => row.carries_A));
    expect(most).toBeCloseTo(Math.abs(readings.wires.get(wireId(lamps, "W8"))!.amps), 6);
  });
});

describe("the budget of a load", () => {
  const readings = readingsOf(lamps);
  const [drop] = budgetsOf(readings, select(lamps, "E1"));
  const view = budgetView(readings, drop!);

  test("its pieces fill the bar up to the drop, one after another", () => {
    let at = 0;
    for (const row of view.rows) {
      expect(row.from_percent).toBeCloseTo(at, 9);
      at += row.long_percent;
    }
    const whole_V = Math.max(drop!.budget.total_V, drop!.budget.limit_V);
    expect(at).toBeCloseTo((drop!.budget.total_V / whole_V) * 100, 9);
    expect(view.limit_percent).toBeLessThanOrEqual(100);
  });

  test("it tells supply from return, and each wire can be shown", () => {
    expect(new Set(view.rows.map(({ side }) => side))).toEqual(new Set(["supply", "return"]));
    expect(view.rows.find(({ name }) => name.includes("W8"))!.about).toEqual([{ wire: wireId(lamps, "W8") }]);
    expect(view.words).toMatch(/^\d+\.\d\d V of \d+\.\d\d V; \d+\.\d\d V of it in /);
  });

  test("a wire has the budgets of the loads that it serves", () => {
    const names = budgetsOf(readings, select(lamps, "W8")).map((one) => budgetView(readings, one).name);
    expect(names.sort()).toEqual(["E1", "E2"]);
    expect(budgetsOf(readings, select(lamps, "W9")).map(({ path }) => path.load)).toEqual([
      `${partId(lamps, "E1")}#1`,
    ]);
  });
});

describe("what was taken for granted", () => {
  test("of one wire: only what is about it or about all, with where to state it", () => {
    const rows = assumptionRows(readingsOf(lamps), new Set([wireId(lamps, "W8")]));
    const metal = rows.find((row) => row.words.includes("metal not stated"))!;
    expect(metal.words).toMatch(/^W8: /);
    expect(metal.state).toEqual([
      { of: { wire: wireId(lamps, "W8") }, field: "material", label: "State the metal of W8" },
    ]);
    expect(rows.some((row) => row.words.startsWith("K1"))).toBe(false);
  });

  test("every link leads to a field that is there", () => {
    for (const id of ["full-build", "amplified-sound", "interface-module"]) {
      const harness = sample(id);
      for (const { state } of assumptionRows(readingsOf(harness), new Set()))
        for (const { of, field, label } of state)
          expect(
            basisFields(harness, of).some(({ key }) => key === field),
            label,
          ).toBe(true);
    }
  });

  test("stating it takes the assumption away", () => {
    const of = { wire: wireId(lamps, "W8") };
    const stated = apply(lamps, basisEdit(lamps, of, "material", "copper"));
    if (!stated.ok) throw new Error(stated.why);
    const rows = assumptionRows(readingsOf(stated.harness), new Set([of.wire]));
    expect(rows.some((row) => row.words.includes("metal"))).toBe(false);
  });
});

describe("what figures rest on", () => {
  test("settings of the electrical room keep their neighbours", () => {
    const edit = basisEdit(lamps, "harness", "running_V", 13.9);
    const done = apply(lamps, edit);
    if (!done.ok) throw new Error(done.why);
    expect(done.harness.settings.electrical).toEqual({ ...lamps.settings.electrical, running_V: 13.9 });
    expect(readingsOf(done.harness).solved.built.battery_V).toBe(13.9);
  });

  test("prices are read as they are written, and refused with why", () => {
    const field = basisFields(lamps, "harness").find(({ key }) => key === "prices")!;
    expect(field.read("0.75: 0.40; 2,5 mm²: 1.1")).toEqual({
      ok: true,
      value: [
        { area_mm2: 0.75, perMetre: 0.4 },
        { area_mm2: 2.5, perMetre: 1.1 },
      ],
    });
    expect(field.read("cheap")).toMatchObject({ ok: false, why: expect.stringContaining("cheap") });
  });
});

describe("what if", () => {
  const [battery, ambient] = slidersOf(readingsOf(lamps), AS_IT_IS);

  test("the sliders stand where the readings stand", () => {
    expect(battery).toMatchObject({ value: 14.2, isAsked: false, least: 6 });
    expect(ambient).toMatchObject({ value: lamps.settings.ambient_degC, isAsked: false });
    const [asked] = slidersOf(readingsOf(lamps), { ...AS_IT_IS, supply_V: 11 });
    expect(asked).toMatchObject({ value: 11, isAsked: true });
  });

  test.each([
    ["13.2", { ok: true, value: 13.2 }],
    ["13,2 V", { ok: true, value: 13.2 }],
    ["", { ok: true, value: null }],
    ["60", { ok: false, why: expect.stringContaining("between 6 and") }],
    ["full", { ok: false, why: expect.stringContaining("full") }],
  ])("%j is read", (typed, expected) => {
    expect(readWhatIf(battery!, typed)).toEqual(expected);
  });

  test("it is said in one line, or not at all", () => {
    expect(sayWhatIf(AS_IT_IS)).toBeNull();
    expect(sayWhatIf({ supply_V: 11, ambient_degC: null, amplifiersAtFull: true })).toBe(
      "11 V, amplifiers at full",
    );
  });
});

test.each([
  [{ value: 0.3124, unit: "V" }, "0.31 V"],
  [{ value: 0.00517, unit: "V" }, "5.17 mV"],
  [{ value: 12, unit: "V" }, "12.00 V"],
  [{ value: -12.345, unit: "V" }, "−12.35 V"],
  [{ value: 0, unit: "A" }, "0 A"],
  [{ value: 25.04, unit: "%" }, "25 %"],
])("%j is said as %s", (figure, words) => {
  expect(sayFigure(figure)).toBe(words);
});

test("a rounding error has no sign", () => {
  expect(sayVolts(-1e-9)).toBe("0.00 V");
});
