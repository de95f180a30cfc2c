import fc from "fast-check";
import { expect, test } from "vitest";
import { outsideDiameter } from "../../../src/electrical/conductor/insulation.ts";
import { massPerMetre } from "../../../src/electrical/conductor/mass.ts";
import {
  conductorResistance,
  type ResistanceBasis,
  resistancePerMetre,
  temperatureFactor,
} from "../../../src/electrical/conductor/resistance.ts";
import { isKnown } from "../../../src/electrical/figure.ts";

const copper = { area_mm2: 1.5, temperature_degC: 20, material: "copper", basis: "solid" } as const;

test("the formula carries its numbers, and a table its name", () => {
  const figure = conductorResistance({ ...copper, basis: "iec-60228-class-5", temperature_degC: 50 }, 3);
  expect(figure.formula).toContain("13.3 mΩ/m × 1.1179 at 50 °C");
  expect(figure.formula).toContain("× 3 m");
  expect(figure.table).toBe("IEC 60228 class 5, maximum at 20 °C, 1.5 mm² copper");
  expect(figure.doubt).toBeNull();
});

test("a size that a table skips lies between its neighbours, as cautious as they are, and says so", () => {
  const metal = { ...copper, area_mm2: 3, basis: "iec-60228-class-5" } as const;
  const figure = resistancePerMetre(metal);
  expect(figure.value * 1000).toBeGreaterThan(4.95);
  expect(figure.value * 1000).toBeLessThan(7.98);
  expect(figure.value / resistancePerMetre({ ...metal, basis: "solid" }).value).toBeGreaterThan(1.14);
  expect(figure.doubt).toContain("3 mm² copper is not in the table");
  const thick = resistancePerMetre({ ...metal, area_mm2: 50 });
  expect(thick.value * 1000).toBeCloseTo(0.39, 9);
  const clad = resistancePerMetre({ ...metal, area_mm2: 2.5, material: "cca-15" });
  expect(clad.value * 1000).toBeCloseTo(7.98 / 0.644, 9);
  expect(clad.doubt).toContain("is not in the table");
});

test("by any table thicker wire resists less", () => {
  for (const basis of ["iec-60228-class-5", "iso-6722-1"] as const) {
    let before = Number.POSITIVE_INFINITY;
    for (let area_mm2 = 0.05; area_mm2 < 120; area_mm2 *= 1.01) {
      const { value } = resistancePerMetre({ ...copper, area_mm2, basis });
      expect(value).toBeLessThan(before);
      before = value;
    }
  }
});

test("what is from memory says so", () => {
  expect(resistancePerMetre({ ...copper, basis: "iso-6722-1" }).doubt).toContain("from memory");
  expect(resistancePerMetre({ ...copper, material: "cca-15" }).doubt).toContain("from memory");
});

test("clad aluminium resists about 1.55 times as much as copper, and tin adds a little", () => {
  const of = (material: "copper" | "tinned-copper" | "cca-15" | "cca-10") =>
    resistancePerMetre({ ...copper, material }).value / resistancePerMetre(copper).value;
  expect(of("cca-15")).toBeCloseTo(1 / 0.644, 9);
  expect(of("cca-10")).toBeGreaterThan(of("cca-15"));
  expect(of("tinned-copper")).toBeCloseTo(1.04, 9);
});

test("resistance grows with length and temperature and falls with area", () => {
  const bases: readonly ResistanceBasis[] = ["solid", "stranded"];
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 100, noNaN: true }),
      fc.double({ min: 0.01, max: 100, noNaN: true }),
      fc.integer({ min: -50, max: 199 }),
      fc.constantFrom(...bases),
      (area_mm2, length_m, temperature_degC, basis) => {
        const metal = { ...copper, area_mm2, temperature_degC, basis };
        const { value } = conductorResistance(metal, length_m);
        expect(conductorResistance(metal, 2 * length_m).value / value).toBeCloseTo(2, 9);
        expect(conductorResistance({ ...metal, area_mm2: area_mm2 * 2 }, length_m).value / value).toBeCloseTo(
          0.5,
          9,
        );
        expect(
          conductorResistance({ ...metal, temperature_degC: temperature_degC + 1 }, length_m).value,
        ).toBeGreaterThan(value);
      },
    ),
    { seed: 183, numRuns: 200 },
  );
});

test.each([
  ["an area of 0", () => resistancePerMetre({ ...copper, area_mm2: 0 })],
  ["an area below 0", () => resistancePerMetre({ ...copper, area_mm2: -1 })],
  ["an area that is no number", () => resistancePerMetre({ ...copper, area_mm2: Number.NaN })],
  ["−51 °C", () => temperatureFactor("copper", -51)],
  ["201 °C", () => temperatureFactor("copper", 201)],
  ["no temperature", () => temperatureFactor("copper", Number.NaN)],
  ["a negative length", () => conductorResistance(copper, -0.1)],
  ["an endless length", () => conductorResistance(copper, Number.POSITIVE_INFINITY)],
  ["an outside diameter of no area", () => outsideDiameter(Number.NaN, "thin")],
])("refuses %s", (_name, run) => {
  expect(run).toThrow(RangeError);
});

// Source: a cable distributor's sheet for ISO 6722 class B thin-wall PVC, largest outside diameter.
test.each([
  [0.5, 1.7],
  [0.75, 1.9],
  [1.5, 2.4],
  [2.5, 3.0],
  [6, 4.3],
  [10, 6.0],
])("%f mm² thin wall is at most %f mm across", (area_mm2, diameter_mm) => {
  expect(outsideDiameter(area_mm2, "thin")).toMatchObject({ value: diameter_mm, unit: "mm" });
});

test("between two sizes the diameter lies between theirs and says so; beyond the table nothing is said", () => {
  const between = outsideDiameter(1.31, "thin");
  expect(isKnown(between) && between.value).toBeGreaterThan(2.1);
  expect(isKnown(between) && between.value).toBeLessThan(2.4);
  expect(between).toMatchObject({ doubt: expect.stringContaining("read between its neighbours") });
  expect(outsideDiameter(0.05, "thin")).toHaveProperty("unknown");
  expect(outsideDiameter(150, "thin")).toHaveProperty("unknown");
  expect(outsideDiameter(10, "medium")).toHaveProperty("unknown");
});

test("a metre of 2.5 mm² thin-wall copper weighs between its bare copper and half as much again", () => {
  const mass = massPerMetre(2.5, "copper", "thin");
  const bare_g = 2.5 * 8.89;
  expect(isKnown(mass) && mass.value).toBeGreaterThan(bare_g);
  expect(isKnown(mass) && mass.value).toBeLessThan(bare_g * 1.5);
  const clad = massPerMetre(2.5, "cca-15", "thin");
  expect(isKnown(clad) && isKnown(mass) && clad.value / mass.value).toBeLessThan(0.6);
});
