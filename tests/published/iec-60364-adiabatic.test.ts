import { expect, test } from "vitest";
import { kFactor } from "../../src/electrical/fuse/adiabatic.ts";
import { prospectiveCurrent } from "../../src/electrical/fuse/short-circuit.ts";

// Source: IEC 60364-5-54 (and BS 7671) k of thermoplastic and thermosetting insulation up to 300 mm², as a cable-sizing
// guide reprints it: insulation, temperature at the start, copper, aluminium.
test.each([
  ["pvc", 70, 115, 76],
  ["pvc", 90, 100, 66],
  ["xlpe", 90, 143, 94],
] as const)("%s from %i °C: k = %i copper, %i aluminium", (insulation, start_degC, copper, aluminium) => {
  expect(Math.round(kFactor("copper", insulation, start_degC).value)).toBe(copper);
  // Clad aluminium is reckoned as aluminium, and says so.
  const clad = kFactor("cca-15", insulation, start_degC);
  expect(Math.abs(clad.value - aluminium)).toBeLessThan(0.6);
  expect(clad.doubt).not.toBeNull();
});

// Source: Lessons In Electric Circuits, DC volume: 10 V behind 0.2 Ω, shorted: 50 A (ch. 11); 230 V through two wires of
// 5.651 Ω, shorted at the load: 20.352 A (conductors chapter).
test("textbook short circuits", () => {
  expect(prospectiveCurrent(10, 0.2, 0).value).toBeCloseTo(50, 9);
  expect(prospectiveCurrent(230, 0, 2 * 5.6506).value).toBeCloseTo(20.352, 3);
});
