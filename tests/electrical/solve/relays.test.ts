import { describe, expect, test } from "vitest";
import { solve, voltsAcross } from "../../../src/electrical/solve/solve.ts";
import type { Warning } from "../../../src/electrical/solve/warnings.ts";
import { circuitOf, closable, coil, contact, resistance, supply } from "./elements.ts";

const kinds = (warnings: readonly Warning[]) => warnings.map(({ kind }) => kind);
const battery = supply(1, 0, 12.6, 0.01);

describe("a relay", () => {
  test("closes its make contact and opens its break contact", () => {
    const circuit = circuitOf(
      battery,
      coil(1, 0),
      contact(1, 2, 1, "pulled"),
      contact(1, 3, 1, "released"),
      resistance(2, 0, 6),
      resistance(3, 0, 6),
    );
    const { amps, volts, pulled, warnings } = solve(circuit);
    expect(pulled[1]).toBe(1);
    expect(amps[4]).toBeCloseTo(volts[1]! / 6.004, 12);
    expect(amps[5]).toBeCloseTo(0, 15);
    expect(warnings).toEqual([]);
  });

  test("stays as it was between drop-out and pull-in", () => {
    const circuit = circuitOf(supply(1, 0, 5), coil(1, 0));
    expect(solve(circuit).pulled[1]).toBe(0);
    const held = solve(circuit, { pulled: Uint8Array.of(0, 1) });
    expect(held.pulled[1]).toBe(1);
    expect(held.warnings).toEqual([{ kind: "relays-hold", coils: [1] }]);
    expect(solve(circuitOf(supply(1, 0, 1.4), coil(1, 0)), { pulled: Uint8Array.of(0, 1) }).pulled[1]).toBe(
      0,
    );
  });

  test("drives the next, down a long line", () => {
    const line = [battery];
    for (let stage = 0; stage < 40; stage++) {
      const node = stage + 1;
      line.push(coil(node, 0), contact(1, node + 1, line.length, "pulled"));
    }
    const { pulled } = solve(circuitOf(...line));
    expect([...pulled].filter((state) => state === 1)).toHaveLength(40);
  });

  test("that breaks its own feed is reported as chattering, and shown released", () => {
    const circuit = circuitOf(battery, coil(1, 2), contact(2, 0, 1, "released"));
    const solution = solve(circuit);
    expect(solution.warnings).toEqual([{ kind: "relays-chatter", coils: [1] }]);
    expect(solution.pulled[1]).toBe(0);
    expect(voltsAcross(solution, 1, 2)).toBeCloseTo((12.6 * 85) / 85.014, 9);
  });

  test("chatters without disturbing one that does not", () => {
    const circuit = circuitOf(battery, coil(1, 2), contact(2, 0, 1, "released"), coil(1, 0));
    const { pulled, warnings } = solve(circuit);
    expect(warnings).toEqual([{ kind: "relays-chatter", coils: [1] }]);
    expect(pulled[3]).toBe(1);
  });

  test("chatters where its load pulls the feed down below drop-out", () => {
    // 20 A through 0.6 Ω leave nothing for the coil behind the same resistance.
    const circuit = circuitOf(
      battery,
      resistance(1, 2, 0.6),
      coil(2, 0),
      contact(2, 3, 2, "pulled"),
      resistance(3, 0, 0.05),
    );
    expect(solve(circuit).warnings).toEqual([{ kind: "relays-chatter", coils: [2] }]);
  });
});

describe("a relay that holds itself", () => {
  const latch = (start: boolean, stop: boolean) =>
    circuitOf(
      battery,
      closable(1, 2, !stop),
      closable(2, 3, start),
      coil(3, 0),
      contact(2, 3, 3, "pulled"),
      resistance(3, 0, 12),
    );

  test("is off or on by what was before, and either way is reported", () => {
    const off = solve(latch(false, false));
    const pressed = solve(latch(true, false), off);
    const on = solve(latch(false, false), pressed);
    const stopped = solve(latch(false, true), on);
    expect([off, pressed, on, stopped].map(({ pulled }) => pulled[3])).toEqual([0, 1, 1, 0]);
    expect(off.warnings).toEqual([{ kind: "relays-hold", coils: [3] }]);
    expect(on.warnings).toEqual([{ kind: "relays-hold", coils: [3] }]);
    expect(kinds(pressed.warnings)).toEqual([]);
  });

  test("is found among others whether each is turned over or all at once", () => {
    const elements = [...latch(false, false).elements];
    for (let more = 0; more < 5; more++) elements.push(coil(1, 0));
    const circuit = circuitOf(...elements);
    const hold: Warning = { kind: "relays-hold", coils: [3] };
    expect(solve(circuit, { turnEachRelay: true }).warnings).toEqual([hold]);
    expect(solve(circuit, { turnEachRelay: false }).warnings).toEqual([
      hold,
      { kind: "holding-half-searched" },
    ]);
  });
});

test("two relays that lock each other out race, and one of them wins", () => {
  const circuit = circuitOf(
    battery,
    coil(1, 2),
    coil(1, 3),
    contact(2, 0, 2, "released"),
    contact(3, 0, 1, "released"),
  );
  const { pulled, warnings } = solve(circuit);
  expect(pulled[1]! + pulled[2]!).toBe(1);
  expect(warnings).toEqual([
    { kind: "relays-race", coils: [1, 2] },
    { kind: "relays-hold", coils: [1, 2] },
  ]);
});

test("a thousand relays that break their own feeds end, and each is named", () => {
  const elements = [supply(1, 0, 12.6, 0.0001)];
  const coils: number[] = [];
  for (let node = 2; node < 1002; node++) {
    coils.push(elements.length);
    elements.push(coil(1, node), contact(node, 0, elements.length, "released"));
  }
  expect(solve(circuitOf(...elements)).warnings).toContainEqual({ kind: "relays-chatter", coils });
});
