import { describe, expect, test } from "vitest";
import { type AwgName, awgArea_mm2 } from "../../src/catalogue/conductors.ts";
import { resistancePerMetre, temperatureFactor } from "../../src/electrical/conductor/resistance.ts";

const OHM_PER_KFT_TO_OHM_PER_M = 1 / 304.8;

function ohmPerKft(gauge: AwgName, temperature_degC: number, basis: "solid" | "stranded"): number {
  const metal = { area_mm2: awgArea_mm2(gauge), temperature_degC, material: "copper", basis } as const;
  return resistancePerMetre(metal).value / OHM_PER_KFT_TO_OHM_PER_M;
}

// Source: IEC 60028 (1925), International Annealed Copper Standard: 1/58 Ω·mm²/m at 20 °C.
test("one metre of 1 mm² is 17.241 mΩ at 20 °C", () => {
  const metal = { area_mm2: 1, temperature_degC: 20, material: "copper", basis: "solid" } as const;
  expect(resistancePerMetre(metal).value).toBeCloseTo(0.0172414, 7);
});

// Source: Lessons In Electric Circuits, reference volume, copper wire table after ASTM B258 with IACS copper at 20 °C;
// ohms per 1 000 ft, here worked out again with 1.7241e-8 Ω·m to four figures.
test.each([
  ["26", 40.81],
  ["22", 16.14],
  ["18", 6.385],
  ["16", 4.015],
  ["14", 2.525],
  ["10", 0.9988],
  ["8", 0.6282],
  ["4", 0.2485],
  ["1/0", 0.09827],
  ["4/0", 0.04901],
] as const)("AWG %s solid: %f ohms per 1 000 ft at 20 °C", (gauge, published) => {
  expect(ohmPerKft(gauge, 20, "solid") / published).toBeCloseTo(1, 3);
});

// Source: NEC chapter 9 table 8, direct-current resistance at 75 °C, uncoated copper, ohms per 1 000 ft.
describe("NEC chapter 9 table 8", () => {
  test.each([
    ["18", 7.77],
    ["16", 4.89],
    ["14", 3.07],
    ["12", 1.93],
    ["10", 1.21],
    ["8", 0.764],
  ] as const)("AWG %s solid is %f within 0.4 %%", (gauge, published) => {
    expect(Math.abs(ohmPerKft(gauge, 75, "solid") / published - 1)).toBeLessThan(0.004);
  });

  test.each([
    ["18", 7.95],
    ["16", 4.99],
    ["14", 3.14],
    ["12", 1.98],
    ["10", 1.24],
    ["8", 0.778],
    ["6", 0.491],
    ["4", 0.308],
    ["2", 0.194],
    ["1/0", 0.122],
    ["2/0", 0.0967],
    ["4/0", 0.0608],
  ] as const)("AWG %s stranded is %f within 0.6 %%", (gauge, published) => {
    expect(Math.abs(ohmPerKft(gauge, 75, "stranded") / published - 1)).toBeLessThan(0.006);
  });

  test.each([
    ["18", 8.45],
    ["14", 3.26],
    ["10", 1.29],
    ["6", 0.51],
    ["2/0", 0.101],
  ] as const)("AWG %s tinned stranded is %f within 3 %%", (gauge, published) => {
    const metal = { area_mm2: awgArea_mm2(gauge), temperature_degC: 75, material: "tinned-copper" } as const;
    const value = resistancePerMetre({ ...metal, basis: "stranded" }).value / OHM_PER_KFT_TO_OHM_PER_M;
    expect(Math.abs(value / published - 1)).toBeLessThan(0.03);
  });
});

// Source: FAA AC 43.13-1B par. 11-66: R(T)/R(20) = (234.5 + T) / 254.5.
test.each([-40, 0, 25, 50, 75, 105, 150])(
  "the factor at %i °C agrees with the run-length correction",
  (T) => {
    expect(temperatureFactor("copper", T) / ((234.5 + T) / 254.5)).toBeCloseTo(1, 3);
  },
);

// Source: IEC 60228 correction to 20 °C, table as printed; it follows 250 / (230 + T), which is 0.4 % low at 100 °C.
test.each([
  [25, 0.98],
  [30, 0.962],
  [50, 0.893],
  [75, 0.82],
  [100, 0.758],
])("at %i °C the standard's inverse factor %f is met within 0.5 %%", (T, published) => {
  expect(Math.abs(1 / temperatureFactor("copper", T) / published - 1)).toBeLessThan(0.005);
});
