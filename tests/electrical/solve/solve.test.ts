import { describe, expect, test } from "vitest";
import type { CircuitElement } from "../../../src/electrical/solve/circuit.ts";
import { prepare } from "../../../src/electrical/solve/prepare.ts";
import { solve, solvePrepared, voltsAcross, voltsAt, wattsOf } from "../../../src/electrical/solve/solve.ts";
import {
  circuitOf,
  closable,
  coil,
  contact,
  currentLoad,
  powerLoad,
  resistance,
  supply,
} from "./elements.ts";

describe("islands", () => {
  test("without a supply float: no volts, no current, and a warning for what is in them", () => {
    const circuit = circuitOf(
      supply(1, 0, 12),
      resistance(1, 0, 6),
      resistance(2, 3, 6),
      closable(1, 2, false),
    );
    const solution = solve(circuit);
    expect(voltsAt(solution, 2)).toBeNull();
    expect(voltsAcross(solution, 2, 3)).toBeNull();
    expect(voltsAcross(solution, 1, 0)).toBeCloseTo(12, 12);
    expect([...solution.amps]).toEqual([2, 2, 0, 0]);
    expect(solution.warnings).toEqual([{ kind: "no-supply", elements: [2] }]);
  });

  test("with a supply of their own have a zero of their own", () => {
    const solution = solve(
      circuitOf(supply(1, 0, 12), resistance(1, 0, 6), supply(3, 2, 9), resistance(3, 2, 3)),
    );
    expect(solution.islands.map(({ reference }) => reference)).toEqual([0, 2]);
    expect(voltsAt(solution, 3)).toBeCloseTo(9, 12);
    expect(voltsAcross(solution, 3, 0)).toBeNull();
    expect(solution.warnings).toEqual([]);
  });

  test("a battery on one lead carries nothing, and its free end follows", () => {
    const solution = solve(
      circuitOf(supply(1, 0, 12), resistance(1, 0, 6), supply(3, 1, 9), powerLoad(3, 4, 50)),
    );
    expect(voltsAt(solution, 3)).toBeCloseTo(21, 12);
    expect(voltsAt(solution, 4)).toBeCloseTo(21, 9);
    expect(solution.amps[2]).toBeCloseTo(0, 9);
  });

  test("nothing at all is no island and no error", () => {
    expect(solve({ nodeCount: 0, elements: [] })).toMatchObject({ islands: [], warnings: [], steps: 1 });
    expect(voltsAt(solve({ nodeCount: 1, ground: 0, elements: [] }), 0)).toBeNull();
  });
});

describe("shorts and supplies that fight get an answer and a warning", () => {
  const finite = (elements: readonly CircuitElement[]) => {
    const solution = solve(circuitOf(...elements));
    expect([...solution.amps, ...solution.volts].every(Number.isFinite)).toBe(true);
    return solution;
  };

  test("a battery across a short lead", () => {
    const { amps, warnings } = finite([supply(1, 0, 12, 0.01), resistance(1, 0, 0.002)]);
    expect(amps[0]).toBeCloseTo(1000, 9);
    expect(warnings).toEqual([{ kind: "dead-short", elements: [0], amps: amps[0] }]);
  });

  test("an ideal supply across nothing", () => {
    const { warnings } = finite([
      supply(1, 0, 12),
      resistance(1, 2, 0),
      resistance(2, 0, 0),
      resistance(1, 0, 5),
    ]);
    expect(warnings).toEqual([{ kind: "dead-short", elements: [2, 1, 0], amps: 12e6 }]);
  });

  test("a starter is no short", () => {
    expect(finite([supply(1, 0, 12.6, 0.008), resistance(1, 0, 0.05)]).warnings).toEqual([]);
  });

  test("two unlike ideal supplies side by side", () => {
    const { warnings, volts } = finite([supply(1, 0, 12), supply(1, 0, 13), resistance(1, 0, 5)]);
    expect(volts[1]).toBe(12);
    expect(warnings).toEqual([{ kind: "conflicting-supplies", elements: [1, 0], amps: 1e6 }]);
  });

  test("two like ones share what nobody can divide", () => {
    const { warnings, amps } = finite([supply(1, 0, 12), supply(1, 0, 12), resistance(1, 0, 5)]);
    expect(amps[0]! + amps[1]!).toBeCloseTo(2.4, 12);
    expect(warnings).toEqual([{ kind: "undivided-current", elements: [1, 0] }]);
  });

  test("24 V on a 12 V battery is a fight, 14.4 V is charging", () => {
    const onto = (emf_V: number) => finite([supply(1, 0, 12.4, 0.01), supply(1, 0, emf_V, 0.01)]).warnings;
    expect(onto(24)).toEqual([
      { kind: "conflicting-supplies", elements: [0, 1], amps: expect.closeTo(580, 9) },
    ]);
    expect(onto(14.4)).toEqual([]);
  });

  test("a battery the wrong way round", () => {
    const { warnings } = finite([supply(1, 0, 12.4, 0.01), supply(0, 1, 12.4, 0.01)]);
    expect(warnings.map(({ kind }) => kind)).toEqual(["dead-short", "dead-short"]);
  });

  test("a supply on itself, and a wire from a node to itself", () => {
    const { warnings } = finite([supply(1, 1, 12), resistance(0, 0, 0.1), supply(0, 0, 12, 0.1)]);
    expect(warnings.map(({ kind }) => kind)).toContain("dead-short");
  });
});

describe("loads", () => {
  const output: CircuitElement = {
    kind: "output",
    plus: 1,
    minus: 0,
    emf_V: 12,
    resistance_ohm: 0.1,
    limit_A: 2,
  };

  test("a limited output gives what is asked up to its limit, and hardly more", () => {
    expect(solve(circuitOf(output, resistance(1, 0, 11.9))).amps[0]).toBeCloseTo(1, 12);
    const { amps, warnings } = solve(circuitOf(output, resistance(1, 0, 0)));
    expect(amps[0]).toBeGreaterThan(2);
    expect(amps[0]).toBeLessThan(2.0021);
    expect(warnings).toEqual([{ kind: "output-at-limit", element: 0 }]);
  });

  test("a limited output into a load that asks for more lets the load starve", () => {
    const { volts, warnings } = solve(circuitOf(output, currentLoad(1, 0, 4, 8)));
    expect(volts[1]).toBeCloseTo(4, 2);
    expect(warnings.map(({ kind }) => kind)).toEqual(["output-at-limit", "load-starved"]);
  });

  test("two loads of constant current in series settle on the smaller", () => {
    const { amps, warnings } = solve(
      circuitOf(supply(1, 0, 24), currentLoad(1, 2, 2, 6), currentLoad(2, 0, 1, 6)),
    );
    expect(amps[0]).toBeCloseTo(1, 9);
    expect(warnings).toEqual([{ kind: "load-starved", element: 1, volts: expect.closeTo(3, 6) }]);
  });

  test("one whose ground is missing draws nothing", () => {
    const { amps } = solve(circuitOf(supply(1, 0, 12), currentLoad(1, 2, 20), powerLoad(1, 3, 100)));
    expect(Math.max(...amps.map(Math.abs))).toBeLessThan(1e-9);
  });

  test("watts: what is delivered is negative", () => {
    const circuit = circuitOf(supply(1, 0, 12), resistance(1, 0, 6));
    expect([...wattsOf(circuit, solve(circuit))]).toEqual([-24, 24]);
  });
});

test("relay contacts and switches of no resistance have the least that is allowed", () => {
  const { amps } = solve(
    circuitOf(
      supply(1, 0, 12),
      { ...closable(1, 2, true), resistance_ohm: 0 } as CircuitElement,
      resistance(2, 0, 6),
    ),
  );
  expect(amps[1]).toBeCloseTo(12 / 6.00001, 9);
});

test("what was prepared for one shape is refused for another", () => {
  const circuit = circuitOf(supply(1, 0, 12, 0.01), resistance(1, 0, 6));
  const prepared = prepare(circuit);
  const other = circuitOf(supply(1, 0, 12, 0.01), resistance(1, 0, 0));
  expect(() => solvePrepared(prepared, other)).toThrow("call prepare()");
  expect(
    solvePrepared(prepared, circuitOf(supply(1, 0, 24, 0.01), resistance(1, 0, 6))).volts[1],
  ).toBeGreaterThan(23);
});

describe("a circuit without meaning is refused, and the error names the figure", () => {
  test.each<readonly [CircuitElement, string]>([
    [
      resistance(0, 1, Number.NaN),
      "element 1 (resistance): resistance_ohm is NaN; expected a finite number ≥ 0",
    ],
    [resistance(0, 1, -1), "resistance_ohm is -1"],
    [supply(0, 1, Number.POSITIVE_INFINITY), "emf_V is Infinity; expected a finite number"],
    [powerLoad(0, 1, 10, 0), "minimum_V is 0; expected a finite number > 0"],
    [resistance(0, 1.5, 1), "joins nodes 0 and 1.5"],
    [contact(0, 1, 0, "pulled"), "element 1 (contact) names element 0 as its coil"],
    [{ ...coil(0, 1), dropOut_V: 9 } as CircuitElement, "dropOut_V is over pullIn_V"],
  ])("%o", (element, words) => {
    const circuit = { nodeCount: 2, ground: 0, elements: [supply(1, 0, 12), element] };
    expect(() => solve(circuit)).toThrow(words);
    expect(() => solve(circuit)).toThrow(RangeError);
  });

  test("ground outside", () => {
    expect(() => solve({ nodeCount: 2, ground: 2, elements: [] })).toThrow("ground is node 2");
  });
});
