import { expect, test } from "vitest";
import { solve } from "../../../src/electrical/solve/solve.ts";
import { circuitOf, coil, currentLoad, powerLoad, resistance, supply } from "./elements.ts";

// Vehicle circuits small enough to be solved by hand: the source of each is the law named beside it.

// Ohm's law: the conductances add up to 17/12 S behind 10 mΩ.
test("a battery behind 10 mΩ feeds 1.2, 2.4 and 6 Ω", () => {
  const { volts, amps } = solve(
    circuitOf(supply(1, 0, 12.6, 0.01), resistance(1, 0, 1.2), resistance(1, 0, 2.4), resistance(1, 0, 6)),
  );
  expect(volts[1]).toBeCloseTo(15120 / 1217, 12);
  expect(amps[0]).toBeCloseTo(15120 / 1217 / (12 / 17), 11);
});

// Ohm's law: 21.5 A over 20 mΩ lift both returns by 0.43 V.
test("two loads share a ground lead, and the strong one takes from the weak one", () => {
  const shared = (amplifier_A: number) =>
    solve(
      circuitOf(
        supply(1, 0, 13.8),
        resistance(1, 2, 0.01),
        currentLoad(2, 4, amplifier_A),
        resistance(1, 3, 0.03),
        currentLoad(3, 4, 1.5),
        resistance(4, 0, 0.02),
      ),
    );
  const both = shared(20);
  expect(both.volts[4]).toBeCloseTo(0.43, 12);
  expect(both.volts[2]! - both.volts[4]!).toBeCloseTo(13.17, 12);
  expect(both.volts[3]! - both.volts[4]!).toBeCloseTo(13.325, 12);
  expect(shared(0).volts[4]).toBeCloseTo(0.03, 12);
});

// Kirchhoff at the splice: (12.6 − V) / 0.04 = V / 6.06 + V / 3.08.
test("two loads share a feed", () => {
  const { volts, amps } = solve(
    circuitOf(
      supply(1, 0, 12.6),
      resistance(1, 2, 0.04),
      resistance(2, 3, 0.06),
      resistance(3, 0, 6),
      resistance(2, 4, 0.08),
      resistance(4, 0, 3),
    ),
  );
  expect(volts[2]).toBeCloseTo(1469853 / 118940, 12);
  expect(volts[3]).toBeCloseTo((1469853 / 118940) * (6 / 6.06), 12);
  expect(amps[0]).toBeCloseTo(6.05158063, 8);
});

// Fibonacci numbers: going back from 1 V at the end, each shunt and each series ohm adds the last two.
test("a ladder of three cells of 1 Ω on 13 V stands at 5, 2 and 1 V", () => {
  const { volts, amps } = solve(
    circuitOf(
      supply(1, 0, 13),
      ...[1, 2, 3].flatMap((node) => [resistance(node, node + 1, 1), resistance(node + 1, 0, 1)]),
    ),
  );
  [13, 5, 2, 1].forEach((value, index) => {
    expect(volts[index + 1]).toBeCloseTo(value, 12);
  });
  expect(amps[0]).toBeCloseTo(8, 12);
});

// Ohm's law; and without the ground lead no current flows, so that both ends of the coil stand at the battery's volts.
test("a relay's coil, and the same with its ground lead missing", () => {
  const whole = solve(circuitOf(supply(1, 0, 12), resistance(1, 2, 0.1), coil(2, 3), resistance(3, 0, 0.1)));
  expect(whole.amps[2]).toBeCloseTo(12 / 85.2, 12);
  expect(whole.volts[3]).toBeCloseTo(1.2 / 85.2, 12);
  expect(whole.pulled[2]).toBe(1);
  const broken = solve(circuitOf(supply(1, 0, 12), resistance(1, 2, 0.1), coil(2, 3)));
  expect(broken.amps[2]).toBeCloseTo(0, 12);
  expect(broken.volts[3]).toBeCloseTo(12, 12);
  expect(broken.pulled[2]).toBe(0);
});

// Ohm's law around one loop of 0.77 Ω; with the ground in place, 5 mΩ beside 170.
test("an amplifier that lost its ground returns through the signal's shield", () => {
  const lost = [supply(1, 0, 13.8), resistance(1, 2, 0.6), resistance(2, 3, 0.15), resistance(3, 0, 0.02)];
  const through = solve(circuitOf(...lost));
  expect(through.amps[2]).toBeCloseTo(13.8 / 0.77, 11);
  expect(through.volts[2]).toBeCloseTo((13.8 / 0.77) * 0.17, 11);
  const ground_ohm = 1 / (1 / 0.005 + 1 / 0.17);
  const grounded = solve(circuitOf(...lost, resistance(2, 0, 0.005)));
  expect(grounded.volts[2]).toBeCloseTo((13.8 * ground_ohm) / (0.6 + ground_ohm), 12);
  expect(grounded.amps[2]).toBeCloseTo(0.65186585, 7);
});

// Quadratic formula: V² − 12.6 V + 0.1 P = 0, the upper root; no root above 12.6² / 0.4 W.
test("a load of constant power behind 0.1 Ω takes the higher of its two voltages, and starves where there is none", () => {
  const behind = (power_W: number) =>
    solve(circuitOf(supply(1, 0, 12.6), resistance(1, 2, 0.1), powerLoad(2, 0, power_W, 5)));
  expect(behind(100).volts[2]).toBeCloseTo((12.6 + Math.sqrt(12.6 ** 2 - 40)) / 2, 10);
  const edge_W = 12.6 ** 2 / 0.4;
  expect(behind(edge_W * 0.9999).volts[2]).toBeCloseTo(6.3 * (1 + Math.sqrt(0.0001)), 6);
  const starved = behind(edge_W * 1.01);
  // Below 5 V it is a resistance of 25 V² / P.
  const load_ohm = 25 / (edge_W * 1.01);
  expect(starved.volts[2]).toBeCloseTo((12.6 * load_ohm) / (load_ohm + 0.1), 10);
  expect(starved.warnings).toEqual([{ kind: "load-starved", element: 2, volts: starved.volts[2] }]);
});
