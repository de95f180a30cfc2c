import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ampacityBook } from "../../../src/electrical/conductor/ampacity-books.ts";
import { cutLength, wireCost } from "../../../src/electrical/conductor/cut-length.ts";
import { areaForDrop_mm2, voltageDrop } from "../../../src/electrical/conductor/drop.ts";
import { dropBudget } from "../../../src/electrical/conductor/drop-budget.ts";
import { DROP_LIMITS } from "../../../src/electrical/conductor/drop-limits.ts";
import { type SizeTask, sizeWire } from "../../../src/electrical/conductor/size-wire.ts";
import { AWG_STANDARD, METRIC_STANDARD, saeGaugeFor } from "../../../src/electrical/conductor/sizes.ts";

const task: SizeTask = {
  current_A: 10,
  length_m: 6,
  drop_V: 0.38,
  system_V: 12,
  temperature_degC: 20,
  material: "copper",
  basis: "iec-60228-class-5",
  book: ampacityBook("thin-wall-sheet"),
  conditions: { insulationLimit_degC: 105, engineSpace: false, loadedInBundle: 1, system_V: 12 },
  sizes: METRIC_STANDARD,
};

describe("size for me", () => {
  test("the drop decides on a long wire, and the next thinner size is named with what it fails", () => {
    const result = sizeWire(task);
    expect(result).toMatchObject({ ok: true, size: { name: "4 mm²" }, decidedBy: "drop" });
    expect(result.why).toContain(
      "4 mm² carries 39 A and loses 0.297 V of 0.38 V; 3 mm² loses 0.398 V of 0.38 V",
    );
  });

  test("the current decides on a short one", () => {
    const result = sizeWire({ ...task, current_A: 15, length_m: 0.3 });
    expect(result).toMatchObject({ ok: true, size: { name: "1 mm²" }, decidedBy: "ampacity" });
    expect(result.why).toContain("0.75 mm² carries 14 A where 15 A flow");
  });

  test("both may decide, or neither", () => {
    expect(sizeWire({ ...task, current_A: 15, drop_V: 2.1 })).toMatchObject({
      size: { name: "1 mm²" },
      decidedBy: "both",
    });
    const thinnest = sizeWire({ ...task, current_A: 0.1 });
    expect(thinnest).toMatchObject({ size: { name: "0.5 mm²" }, decidedBy: "thinnest" });
    expect(thinnest.why).toContain("the sheet begins at 0.5 mm²");
  });

  test("a least size is kept for its strength", () => {
    expect(sizeWire({ ...task, current_A: 0.1, least_mm2: 1 })).toMatchObject({ size: { name: "1 mm²" } });
  });

  test("clad aluminium takes a thicker wire, for heat and for drop", () => {
    const clad = sizeWire({ ...task, material: "cca-15", current_A: 13, length_m: 0.3 });
    expect(clad).toMatchObject({ size: { name: "1 mm²" }, decidedBy: "ampacity" });
    expect(sizeWire({ ...task, current_A: 13, length_m: 0.3 })).toMatchObject({ size: { name: "0.75 mm²" } });
  });

  test("where no size does, it says which demand fails and where the book ends", () => {
    const far = sizeWire({ ...task, length_m: 60 });
    expect(far).toMatchObject({ ok: false, fails: "drop" });
    expect(far.why).toContain("even 10 mm² loses");
    expect(far.why).toContain("the sheet ends at 10 mm²");
    expect(sizeWire({ ...task, current_A: 500, length_m: 0.01 })).toMatchObject({
      ok: false,
      fails: "ampacity",
    });
  });

  test("the size found meets both demands and the one below it does not", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 200, noNaN: true }),
        fc.double({ min: 0, max: 30, noNaN: true }),
        fc.double({ min: 0.05, max: 3, noNaN: true }),
        fc.constantFrom("33-cfr-183", "five-per-mm2", "ac-43-13-1b"),
        (current_A, length_m, drop_V, id) => {
          const one = { ...task, current_A, length_m, drop_V, book: ampacityBook(id), sizes: AWG_STANDARD };
          const result = sizeWire(one);
          if (!result.ok) return;
          expect(result.ampacity.value).toBeGreaterThanOrEqual(current_A);
          expect(result.drop.value).toBeLessThanOrEqual(drop_V);
          const index = AWG_STANDARD.indexOf(result.size);
          const thinner = sizeWire({ ...one, sizes: AWG_STANDARD.slice(Math.max(0, index - 1), index + 1) });
          if (index > 0 && result.decidedBy !== "thinnest")
            expect(thinner).toMatchObject({ size: result.size });
          // More load or more length never lets the wire be thinner.
          const more = sizeWire({ ...one, current_A: current_A * 1.3, length_m: length_m * 1.3 });
          if (more.ok) expect(more.size.area_mm2).toBeGreaterThanOrEqual(result.size.area_mm2);
        },
      ),
      { seed: 4, numRuns: 300 },
    );
  });

  test.each([
    ["a negative current", { current_A: -1 }],
    ["no current", { current_A: Number.NaN }],
    ["a negative length", { length_m: -1 }],
    ["a drop of 0", { drop_V: 0 }],
    ["a voltage of 0", { system_V: 0 }],
    ["a temperature out of range", { temperature_degC: 300 }],
    ["no sizes", { sizes: [] }],
  ])("refuses %s", (_name, change) => {
    expect(() => sizeWire({ ...task, ...change })).toThrow(RangeError);
  });
});

test("a thicker wire never drops more", () => {
  const loses = METRIC_STANDARD.map(({ area_mm2 }) => {
    const metal = { area_mm2, temperature_degC: 60, material: "copper", basis: "stranded" } as const;
    return voltageDrop(metal, 4, 8, 12).drop.value;
  });
  expect([...loses].sort((a, b) => b - a)).toEqual(loses);
});

test("the area for a drop loses just that drop", () => {
  const area_mm2 = areaForDrop_mm2(1 / 58, 6, 10, 0.4);
  const metal = { area_mm2, temperature_degC: 20, material: "copper", basis: "solid" } as const;
  expect(voltageDrop(metal, 6, 10, 12).drop.value).toBeCloseTo(0.4, 12);
  expect(() => areaForDrop_mm2(1 / 58, 6, 10, 0)).toThrow(RangeError);
  expect(() => areaForDrop_mm2(Number.NaN, 6, 10, 1)).toThrow(RangeError);
  expect(() => saeGaugeFor(Number.NaN)).toThrow(RangeError);
  expect(saeGaugeFor(300_000)).toBeNull();
});

test("a budget names what takes most", () => {
  const budget = dropBudget(
    [
      { name: "the feed W1", drop_V: 0.13 },
      { name: "the shared ground lead G2", drop_V: 0.18 },
    ],
    0.4,
  );
  expect(budget).toMatchObject({
    within: true,
    words: "0.31 V of 0.40 V; 0.18 V of it in the shared ground lead G2",
  });
  expect(budget.left_V).toBeCloseTo(0.09, 12);
  expect(dropBudget([{ name: "W1", drop_V: 0.5 }], 0.4).within).toBe(false);
  expect(dropBudget([], 0.4)).toMatchObject({ total_V: 0, largest: null, words: "0.00 V of 0.40 V" });
  expect(() => dropBudget([{ name: "W1", drop_V: -0.1 }], 0.4)).toThrow(RangeError);
  expect(() => dropBudget([], 0)).toThrow(RangeError);
});

// Source: ABYC E-11, 3 % and 10 %; FAA AC 43.13-1B table 11-6, 0.5 V at 14 V and 1 V at 28 V.
test("limits are volts at a voltage", () => {
  const volts = (id: string, system_V: number) => DROP_LIMITS.find((one) => one.id === id)!.limit_V(system_V);
  expect(volts("three-per-cent", 12)).toBeCloseTo(0.36, 12);
  expect(volts("ten-per-cent", 24)).toBeCloseTo(2.4, 12);
  expect(volts("aircraft-continuous", 14)).toBe(0.5);
  expect(volts("aircraft-continuous", 24)).toBe(1);
  expect(volts("aircraft-continuous", 48)).toBeNull();
});

test("a cut is runs with slack, extra and ends, up to the next centimetre", () => {
  const cut = { runs_m: [1.2, 0.8], slack_percent: 5, extra_m: 0.1, termination_mm: [6, 8] as const };
  expect(cutLength(cut)).toMatchObject({ value: 2.22, unit: "m" });
  expect(cutLength({ ...cut, extra_m: 0.086 }).value).toBe(2.2);
  expect(cutLength({ runs_m: [], slack_percent: 0, extra_m: 0, termination_mm: [0, 0] }).value).toBe(0);
  expect(() => cutLength({ ...cut, runs_m: [-1] })).toThrow(RangeError);
  expect(() => cutLength({ ...cut, slack_percent: Number.NaN })).toThrow(RangeError);
  expect(wireCost(2.22, 0.5, "EUR")).toMatchObject({ value: 1.11, unit: "EUR" });
  expect(() => wireCost(1, -1, "EUR")).toThrow(RangeError);
});
