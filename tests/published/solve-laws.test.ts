import { expect, test } from "vitest";
import { LAMP_EXPONENT } from "../../src/electrical/solve/circuit.ts";
import { THERMAL_V } from "../../src/electrical/solve/devices.ts";
import { solve } from "../../src/electrical/solve/solve.ts";
import { circuitOf, resistance, supply } from "../electrical/solve/elements.ts";

// Source: D. G. Fink and H. W. Beaty, Standard Handbook for Electrical Engineers, 11th ed. (1978), p. 22-8: current goes
// with (V / V design)^0.55 and power with ^1.6, of which 1.55 is the rounding.
test("a lamp off its design voltage draws by the handbook's law", () => {
  const lampAt = (volts: number, filament: "hot" | "cold" = "hot") =>
    solve(
      circuitOf(supply(1, 0, volts), {
        kind: "lamp",
        from: 1,
        to: 0,
        rated_V: 12,
        rated_W: 21,
        cold_ohm: 0.5,
        filament,
      }),
    ).amps[1]!;
  expect(LAMP_EXPONENT).toBe(0.55);
  expect(lampAt(12)).toBeCloseTo(1.75, 12);
  expect(lampAt(13.5)).toBeCloseTo(1.75 * 1.125 ** 0.55, 12);
  expect(lampAt(6)).toBeCloseTo(1.75 * 0.5 ** 0.55, 12);
  expect(lampAt(-6)).toBeCloseTo(-lampAt(6), 12);
  expect(lampAt(12, "cold")).toBeCloseTo(24, 12);
  expect(lampAt(0.001)).toBeCloseTo(0.002, 12);
});

// Source: W. Shockley, Bell System Technical Journal 28 (1949) 435: I = Is (exp(V / nVt) − 1); kT/q at 300.15 K from
// the constants of the SI is 25.865 mV.
test("a diode carries what Shockley's law gives for its junction", () => {
  expect(THERMAL_V * 1e3).toBeCloseTo(25.865, 3);
  const diode = { kind: "diode", saturation_A: 1e-12, ideality: 1.5, resistance_ohm: 0.05 } as const;
  const forward = solve(
    circuitOf(supply(1, 0, 12), resistance(1, 2, 10), { ...diode, anode: 2, cathode: 0 }),
  );
  const junction_V = forward.volts[2]! - 0.05 * forward.amps[2]!;
  expect(1e-12 * Math.expm1(junction_V / (1.5 * THERMAL_V))).toBeCloseTo(forward.amps[1]!, 7);
  expect(junction_V).toBeGreaterThan(1);
  const backward = solve(
    circuitOf(supply(1, 0, 12), resistance(1, 2, 10), { ...diode, anode: 0, cathode: 2 }),
  );
  expect(backward.amps[1]).toBeCloseTo(12e-9 + 1e-12, 13);
});
