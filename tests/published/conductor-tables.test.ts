import { expect, test } from "vitest";
import { voltageDrop } from "../../src/electrical/conductor/drop.ts";
import type { Material } from "../../src/electrical/conductor/material.ts";
import { MATERIALS } from "../../src/electrical/conductor/material.ts";
import { resistancePerMetre } from "../../src/electrical/conductor/resistance.ts";
import { IEC_60228_CLASS_5, ISO_6722_1 } from "../../src/electrical/conductor/resistance-tables.ts";

const at20 = { temperature_degC: 20, material: "copper", basis: "iec-60228-class-5" } as const;

// Source: IEC 60228 table 3, class 5, maximum resistance at 20 °C, Ω/km, plain and tinned.
test.each([
  [0.5, 39.0, 40.1],
  [0.75, 26.0, 26.7],
  [1, 19.5, 20.0],
  [1.5, 13.3, 13.7],
  [2.5, 7.98, 8.21],
  [4, 4.95, 5.09],
  [6, 3.3, 3.39],
  [10, 1.91, 1.95],
  [16, 1.21, 1.24],
  [25, 0.78, 0.795],
])("%f mm² class 5: at most %f plain and %f tinned", (area_mm2, plain, tinned) => {
  expect(resistancePerMetre({ ...at20, area_mm2 }).value * 1000).toBeCloseTo(plain, 9);
  const metal = { ...at20, area_mm2, material: "tinned-copper" } as const;
  expect(resistancePerMetre(metal).value * 1000).toBeCloseTo(tinned, 9);
});

// A maximum leaves room for strands, lay and tolerance: 9 to 16 % above ideal copper (IEC), 6 to 16 % (ISO). No more from
// 0.5 mm² on; a slip in one digit of either table falls outside.
test.each([
  [IEC_60228_CLASS_5, 0.5, 1.09, 1.16],
  [ISO_6722_1, 0.13, 1.02, 1.16],
] as const)("every row of $name stands a little above ideal copper", (table, from_mm2, low, high) => {
  const ratios = [...table.plain]
    .filter(([area]) => area >= from_mm2)
    .map(([area, r]) => (r * area) / (1000 / 58));
  expect(ratios.length).toBeGreaterThan(9);
  expect(Math.min(...ratios)).toBeGreaterThan(low);
  expect(Math.max(...ratios)).toBeLessThan(high);
});

// Source: the same tables; ISO 6722-1 allows 0.949 to 0.959 of IEC 60228 class 5 where both list the size.
test("ISO 6722-1 (from memory) stands at a steady share of IEC 60228 class 5", () => {
  const both = [...ISO_6722_1.plain].filter(([area]) => IEC_60228_CLASS_5.plain.has(area) && area >= 0.5);
  expect(both.length).toBe(10);
  for (const [area, value] of both) {
    expect(Math.abs(value / IEC_60228_CLASS_5.plain.get(area)! - 0.954)).toBeLessThan(0.006);
  }
});

// Source: worked from IEC 60228 class 5 at 20 °C: area, metres each way, amperes, loop Ω, volts.
test.each([
  [2.5, 3, 15, 0.04788, 0.7182],
  [1.5, 3, 10, 0.0798, 0.798],
  [0.75, 5, 2, 0.26, 0.52],
  [6, 5, 40, 0.033, 1.32],
  [16, 5, 60, 0.0121, 0.726],
  [0.5, 1.5, 1, 0.117, 0.117],
])("%f mm², %f m each way, %f A: %f Ω, %f V", (area_mm2, each_m, current_A, loop_ohm, drop_V) => {
  const { drop, percent } = voltageDrop({ ...at20, area_mm2 }, 2 * each_m, current_A, 12);
  expect(drop.value).toBeCloseTo(drop_V, 9);
  expect(drop.value / current_A).toBeCloseTo(loop_ohm, 9);
  expect(percent.value).toBeCloseTo((drop_V / 12) * 100, 9);
});

// Source: a wire maker's table of copper-clad aluminium to ASTM B566 at 20 °C: gauge, circular mils, pounds and ohms
// per 1 000 ft for 10 % and 15 % copper. The makers print typical wire; ours is the least conductivity allowed.
test.each([
  ["14", 4109, "cca-10", 4.64, 3.91],
  ["16", 2581, "cca-10", 2.92, 6.23],
  ["18", 1624, "cca-10", 1.84, 9.9],
  ["20", 1024, "cca-10", 1.16, 15.7],
  ["14", 4109, "cca-15", 5.06, 3.79],
  ["16", 2581, "cca-15", 3.19, 6.05],
  ["18", 1624, "cca-15", 2.01, 9.61],
  ["20", 1024, "cca-15", 1.26, 15.2],
] as const)(
  "AWG %s (%i CM) %s: %f lb, and up to 4 %% more than %f ohms",
  (_gauge, cmil, material, pounds, ohms) => {
    const area_mm2 = cmil * (Math.PI / 4) * 0.0254 ** 2;
    const metal = { area_mm2, temperature_degC: 20, material: material as Material, basis: "solid" } as const;
    const over = (resistancePerMetre(metal).value * 304.8) / ohms;
    expect(over).toBeGreaterThan(1.02);
    expect(over).toBeLessThan(1.045);
    const grams = area_mm2 * 304.8 * MATERIALS[material].density_g_per_cm3;
    expect(Math.abs(grams / 453.592 / pounds - 1)).toBeLessThan(0.01);
  },
);
