import { expect, test } from "vitest";
import { awgArea_mm2 } from "../../src/catalogue/conductors.ts";
import { AIRCRAFT_BUNDLES } from "../../src/electrical/conductor/ampacity-aircraft.ts";
import { FIVE_PER_MM2 } from "../../src/electrical/conductor/ampacity-vehicle.ts";
import { voltageDrop } from "../../src/electrical/conductor/drop.ts";
import { MATERIALS } from "../../src/electrical/conductor/material.ts";
import { sizeWire } from "../../src/electrical/conductor/size-wire.ts";
import { AWG_STANDARD } from "../../src/electrical/conductor/sizes.ts";

const FEET_TO_METRES = 0.3048;

/** Drop of a wire that has the resistance which the circular prints, ohms per foot. */
function drop_V(ohmPerFoot: number, feet: number, current_A: number): number {
  const area_mm2 = MATERIALS.copper.resistivity_ohm_mm2_per_m / (ohmPerFoot / FEET_TO_METRES);
  const metal = { area_mm2, temperature_degC: 20, material: "copper", basis: "solid" } as const;
  return voltageDrop(metal, feet * FEET_TO_METRES, current_A, 28).drop.value;
}

// Source: FAA AC 43.13-1B tables 11-7 and 11-8, 20 A, resistance per foot from table 11-9.
test.each([
  ["No. 6", 0.00044, 107, 0.942],
  ["No. 4", 0.00028, 90, 0.504],
  ["No. 14", 0.00306, 100, 6.12],
  ["No. 10", 0.00126, 39, 0.98],
  ["No. 10", 0.00126, 156, 3.93],
  ["No. 10", 0.00126, 273, 6.88],
] as const)("%s, %f ohm/ft, %f ft: %f V", (_wire, ohmPerFoot, feet, printed_V) => {
  expect(drop_V(ohmPerFoot, feet, 20)).toBeCloseTo(printed_V, 2);
});

// Source: the same tables. These two rows are misprinted: the product of the numbers beside them is another.
test.each([
  ["No. 12", 0.00202, 88, 3.6, 3.5552],
  ["No. 10", 0.00126, 19.5, 0.366, 0.4914],
] as const)(
  "%s, %f ohm/ft, %f ft: not the printed %f V but %f V",
  (_wire, ohmPerFoot, feet, printed_V, right_V) => {
    expect(drop_V(ohmPerFoot, feet, 20)).toBeCloseTo(right_V, 9);
    expect(Math.abs(drop_V(ohmPerFoot, feet, 20) - printed_V)).toBeGreaterThan(0.04);
  },
);

// Source: FAA AC 43.13-1B example 1: 50 ft, 20 A, 28 V, 1 V allowed, 20 °C: between No. 8 and No. 10, so No. 8.
test("50 ft at 20 A and 28 V takes No. 8", () => {
  const result = sizeWire({
    current_A: 20,
    length_m: 50 * FEET_TO_METRES,
    drop_V: 1,
    system_V: 28,
    temperature_degC: 20,
    material: "copper",
    basis: "stranded",
    book: FIVE_PER_MM2,
    conditions: { insulationLimit_degC: 105, engineSpace: false, loadedInBundle: 1, system_V: 28 },
    sizes: AWG_STANDARD,
  });
  expect(result).toMatchObject({ ok: true, size: { name: "8 AWG" }, decidedBy: "drop" });
});

// Source: FAA AC 43.13-1B table 11-9, continuous amperes in bundles, 105 / 150 / 200 °C wire.
test.each([
  ["24", 2.5, 4, 5],
  ["20", 4, 7, 9],
  ["16", 7, 11, 14],
  ["10", 17, 26, 32],
  ["8", 38, 57, 71],
  ["2/0", 147, 222, 285],
] as const)("AWG %s in a bundle: %f, %f, %f A", (gauge, ...published) => {
  const read = [105, 150, 200].map((insulationLimit_degC) =>
    AIRCRAFT_BUNDLES.ampacity(awgArea_mm2(gauge), {
      insulationLimit_degC,
      engineSpace: false,
      loadedInBundle: 33,
      system_V: 28,
    }),
  );
  expect(read).toMatchObject(published.map((value) => ({ value })));
});
