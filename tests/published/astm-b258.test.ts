import { expect, test } from "vitest";
import { AWG_NAMES, awgArea_mm2, awgDiameter_in, nearestAwg } from "../../src/catalogue/conductors.ts";

// Source: Lessons In Electric Circuits, reference volume, copper wire table, after ASTM B258. Diameter in inches
// to four places, cross-section in circular mils (the square of the diameter in thousandths of an inch).
test.each([
  ["4/0", 0.46, 211_600],
  ["3/0", 0.4096, 167_800],
  ["2/0", 0.3648, 133_100],
  ["1/0", 0.3249, 105_500],
  ["1", 0.2893, 83_690],
  ["2", 0.2576, 66_370],
  ["4", 0.2043, 41_740],
  ["6", 0.162, 26_250],
  ["8", 0.1285, 16_510],
  ["10", 0.1019, 10_380],
  ["12", 0.0808, 6_530],
  ["14", 0.0641, 4_107],
  ["16", 0.0508, 2_583],
  ["18", 0.0403, 1_624],
  ["20", 0.032, 1_022],
  ["24", 0.0201, 404],
  ["26", 0.0159, 254.1],
] as const)("AWG %s is %f in and %f circular mils", (name, diameter_in, area_cmil) => {
  expect(awgDiameter_in(name)).toBeCloseTo(diameter_in, 4);
  expect((awgDiameter_in(name) * 1000) ** 2 / area_cmil).toBeCloseTo(1, 3);
  // One circular mil is π/4 of a square mil; one inch is 25.4 mm.
  expect(awgArea_mm2(name) / (((area_cmil * Math.PI) / 4) * 0.0254 ** 2)).toBeCloseTo(1, 3);
});

// Source: ASTM B258-02: each gauge is 1.1229322 times as thick as the next, from 0.4600 in at 4/0.
test("4/0 is 0.4600 in exactly, and the steps keep the standard's ratio", () => {
  expect(awgDiameter_in("4/0")).toBeCloseTo(0.46, 12);
  expect(awgDiameter_in("1/0") / awgDiameter_in("1")).toBeCloseTo(1.1229322, 7);
  expect(awgDiameter_in("16") / awgDiameter_in("18")).toBeCloseTo(1.1229322 ** 2, 6);
});

test("each gauge is thinner than the one before it, and is the nearest to its own area", () => {
  for (const [index, name] of AWG_NAMES.entries()) {
    expect(nearestAwg(awgArea_mm2(name))).toBe(name);
    const next = AWG_NAMES[index + 1];
    if (next) expect(awgArea_mm2(next)).toBeLessThan(awgArea_mm2(name));
  }
});
