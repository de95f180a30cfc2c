import { expect, test } from "vitest";
import { solve } from "../../src/electrical/solve/solve.ts";
import { circuitOf, resistance, supply } from "../electrical/solve/elements.ts";

// Source of all in this file: T. R. Kuphaldt, Lessons In Electric Circuits, volume I, DC (a free textbook), the chapter
// named at each. Printed figures are held to their last printed digit, exact fractions (worked out from the same
// circuit by Kirchhoff's laws) to the rounding of the machine.

/** Half a unit of the last digit printed. */
const printed = (value: number, text: string) => {
  const digits = text.split(".")[1]?.length ?? 0;
  expect(Math.abs(value - Number(text))).toBeLessThanOrEqual(0.5000001 * 10 ** -digits);
};

test("chapter 5: 3, 10 and 5 kΩ in series on 9 V carry 0.5 mA and drop 1.5, 5 and 2.5 V", () => {
  const { volts, amps } = solve(
    circuitOf(supply(1, 0, 9), resistance(1, 2, 3000), resistance(2, 3, 10_000), resistance(3, 0, 5000)),
  );
  printed(amps[0]! * 1e3, "0.5");
  printed(volts[1]! - volts[2]!, "1.5");
  printed(volts[2]! - volts[3]!, "5.0");
  printed(volts[3]!, "2.5");
});

test("chapter 5: 10, 2 and 1 kΩ in parallel on 9 V draw 0.9, 4.5 and 9 mA, 14.4 mA in all", () => {
  const { amps } = solve(
    circuitOf(supply(1, 0, 9), resistance(1, 0, 10_000), resistance(1, 0, 2000), resistance(1, 0, 1000)),
  );
  printed(amps[1]! * 1e3, "0.9");
  printed(amps[2]! * 1e3, "4.5");
  printed(amps[3]! * 1e3, "9");
  printed(amps[0]! * 1e3, "14.4");
});

test("chapter 6: 45 V over 5, 10 and 7.5 kΩ divides into 10, 20 and 15 V at 2 mA", () => {
  const { volts, amps } = solve(
    circuitOf(supply(1, 0, 45), resistance(1, 2, 5000), resistance(2, 3, 10_000), resistance(3, 0, 7500)),
  );
  printed(amps[0]! * 1e3, "2");
  printed(volts[1]! - volts[2]!, "10");
  printed(volts[2]! - volts[3]!, "20");
  printed(volts[3]!, "15");
});

test("chapter 7: two parallel pairs in series on 24 V", () => {
  const { volts, amps } = solve(
    circuitOf(
      supply(1, 0, 24),
      resistance(1, 2, 100),
      resistance(1, 2, 250),
      resistance(2, 0, 350),
      resistance(2, 0, 200),
    ),
  );
  printed(volts[1]! - volts[2]!, "8.627");
  printed(volts[2]!, "15.37");
  ["86.27", "34.51", "43.92", "76.86"].forEach((text, index) => {
    printed(amps[index + 1]! * 1e3, text);
  });
  expect(volts[2]).toBeCloseTo(784 / 51, 12);
});

test("chapter 10: two sources and five resistors, by node voltage", () => {
  const { volts } = solve(
    circuitOf(
      supply(1, 0, 10),
      resistance(1, 2, 2),
      resistance(2, 0, 4),
      resistance(2, 3, 2.5),
      resistance(3, 0, 5),
      supply(0, 4, 4),
      resistance(4, 3, 1),
    ),
  );
  printed(volts[2]!, "3.809524");
  printed(volts[3]!, "-1.547619");
  expect(volts[2]).toBeCloseTo(80 / 21, 12);
  expect(volts[3]).toBeCloseTo(-65 / 42, 12);
});

test("chapter 10: the unbalanced bridge on 24 V", () => {
  const { volts, amps } = solve(
    circuitOf(
      supply(1, 0, 24),
      resistance(1, 2, 150),
      resistance(1, 3, 50),
      resistance(2, 3, 100),
      resistance(2, 0, 300),
      resistance(3, 0, 250),
    ),
  );
  printed(volts[2]!, "17.66");
  printed(volts[3]!, "19.31");
  printed(amps[0]!, "0.136092");
  expect(volts[2]).toBeCloseTo(512 / 29, 12);
  expect(volts[3]).toBeCloseTo(560 / 29, 12);
  expect(amps[3]).toBeCloseTo(-48 / 2900, 12);
});

test("chapter 10: the unbalanced bridge on 10 V, by delta and wye", () => {
  const { volts } = solve(
    circuitOf(
      supply(1, 0, 10),
      resistance(1, 2, 12),
      resistance(1, 3, 18),
      resistance(2, 3, 6),
      resistance(2, 0, 18),
      resistance(3, 0, 12),
    ),
  );
  printed(volts[2]!, "5.294");
  printed(volts[3]!, "4.706");
  printed(volts[2]! - volts[3]!, "0.5882");
  expect(volts[2]).toBeCloseTo(90 / 17, 12);
});

test("chapter 11: a battery of 10 V and 0.2 Ω gives 8.333 A into 1 Ω and 50 A into a short, which is said", () => {
  const loaded = solve(circuitOf(supply(1, 0, 10, 0.2), resistance(1, 0, 1)));
  printed(loaded.amps[0]!, "8.333");
  expect(loaded.warnings).toEqual([]);
  const shorted = solve(circuitOf(supply(1, 0, 10, 0.2), resistance(1, 0, 0)));
  printed(shorted.amps[0]!, "50");
  expect(shorted.warnings).toEqual([{ kind: "dead-short", elements: [0], amps: shorted.amps[0] }]);
});
