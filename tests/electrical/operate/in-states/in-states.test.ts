import { describe, expect, test } from "vitest";
import { inStates } from "../../../../src/electrical/operate/in-states/in-states.ts";
import type { Harness, PartId, WireId } from "../../../../src/graph/harness.ts";
import { trace } from "../../../../src/graph/trace.ts";
import { Build } from "../../../build.ts";

const of = (harness: Harness) => inStates(harness, trace(harness));
const part = (name: string) => `p:${name}` as PartId;

/** A reversing lamp by the vehicle's lead, and a work lamp of its own that a relay switches. */
const lamps = () =>
  new Build()
    .vehicle("X1", { "1": "constant-feed RD 1.5 fuse:15", "2": "reverse GN 0.75", "3": "ground BN 1.5" })
    .part("load", "E1", { type: "lamp", current_A: 1.75, function: "reverse" })
    .part("relay", "K1", { poles: "make" })
    .part("load", "E2", { type: "lamp", current_A: 4, function: "work-lamp" })
    .wire("X1.2", "E1.+")
    .wire("E1.−", "X1.3")
    .path("X1.1", "F1", "K1.30")
    .wire("X1.2", "K1.86")
    .wire("K1.85", "XE1")
    .wire("K1.87", "E2.+")
    .wire("E2.−", "XE2").harness;

describe("what is so in one state and in no other", () => {
  const harness = lamps();
  const states = of(harness);
  const lit = states.states.filter((state) => states.at(state).load(`${part("E2")}#1`)!.works);

  test("the work lamp is lit wherever the gear is in reverse, and nowhere else", () => {
    expect(lit.length).toBeGreaterThan(1);
    expect(lit.every(({ conditions }) => conditions.includes("reverse"))).toBe(true);
    expect(lit).toContainEqual({ key: "run", conditions: ["reverse"] });
  });

  test("its relay, fuse and feed tell the same", () => {
    const on = states.at({ key: "run", conditions: ["reverse"] });
    const off = states.at({ key: "run", conditions: [] });
    expect(on.relay(part("K1"))).toMatchObject({ pulledIn: true });
    expect(on.relay(part("K1"))!.coil_A).toBeCloseTo(12.6 / 85, 2);
    expect(on.relay(part("K1"))!.contact_A).toBeCloseTo(on.fuse_A(part("F1"))!, 9);
    expect(on.fuse_A(part("F1"))).toBeGreaterThan(3.5);
    expect(off.relay(part("K1"))).toEqual({ pulledIn: false, coil_A: 0, contact_A: 0 });
    expect(on.source(`${part("X1")}#1`)).toMatchObject({ limit_A: 15, limitedBy: "fuse" });
    expect(on.source(`${part("X1")}#1`)!.amps).toBeCloseTo(on.fuse_A(part("F1"))!, 9);
  });

  test("what is none of a kind, or not there, has no figure of it", () => {
    const view = states.at(states.states[0]!);
    expect(view.fuse_A(part("K1"))).toBeNull();
    expect(view.relay(part("F1"))).toBeNull();
    expect(view.load(`${part("X1")}#1`)).toBeNull();
    expect(view.source(`${part("E1")}#1`)).toBeNull();
    expect(view.isAwake("p:none")).toBeNull();
    expect(view.volts("p:none#1")).toBe("floating");
    expect(view.amps("w:none" as WireId)).toBe(0);
    expect(states.mostThrough("w:none" as WireId).amps).toBe(0);
  });
});

test("with its ground opened a lamp is dark, and its cold end stands at battery volts", () => {
  const harness = lamps();
  const states = of(harness);
  const state = { key: "run", conditions: ["reverse"] } as const;
  const open = states.withOpen({ part: part("XE2") }, state);
  expect(open.load(`${part("E2")}#1`)!.works).toBe(false);
  expect(open.volts(`${part("E2")}#2`)).toBeGreaterThan(12);
  // The rest is as it was, and so is the state itself.
  expect(open.load(`${part("E1")}#1`)!.works).toBe(true);
  expect(states.at(state).load(`${part("E2")}#1`)!.works).toBe(true);
  const wire = Object.values(harness.wires).find(({ ends }) =>
    ends.some((end) => end !== "loose" && end.part === part("XE2")),
  )!;
  expect(states.withOpen({ wire: wire.id }, state).load(`${part("E2")}#1`)!.works).toBe(false);
  expect(states.withOpen({ part: "p:none" as PartId }, state)).toBe(states.at(state));
});

test("a wire's most is told with the first state that has it", () => {
  const harness = lamps();
  const states = of(harness);
  const feed = Object.values(harness.wires).find(({ ends }) =>
    ends.some((end) => end !== "loose" && end.part === part("F1")),
  )!;
  const { amps, state } = states.mostThrough(feed.id);
  expect(amps).toBeGreaterThan(4);
  expect(state.conditions).toContain("engine-running");
  for (const other of states.states)
    expect(Math.abs(states.at(other).amps(feed.id))).toBeLessThanOrEqual(amps);
});

describe("after an edit", () => {
  const first = new Build(lamps())
    .part("supply", "G9", { voltage_V: 12, resistance_ohm: 0.01 })
    .part("resistor", "R9", { resistance_ohm: 10 })
    .wire("G9.+", "R9.1")
    .wire("R9.2", "G9.−").harness;

  test("what has nothing to do with circuits changes nothing at all", () => {
    const states = of(first);
    const moved: Harness = { ...first, layout: { places: {}, paths: {} }, photos: {} };
    expect(inStates(moved, trace(moved), states)).toBe(states);
  });

  test("readings with all their reasons are remembered", () => {
    const states = of(first);
    const state = states.states[0]!;
    expect(states.full(state)).toBe(states.full(state));
    expect(states.full(state).state).toEqual(state);
  });

  test("an answer from before stays good for its own harness", () => {
    const states = of(first);
    const state = { key: "run", conditions: ["reverse"] } as const;
    const load = first.parts[part("E2")]!;
    const changed = { ...load, current_A: 1 } as typeof load;
    const edited = { ...first, parts: { ...first.parts, [load.id]: changed } };
    const after = inStates(edited, trace(edited), states);
    expect(after.at(state).load(`${load.id}#1`)!.amps).toBeLessThan(1.1);
    expect(states.at(state).load(`${load.id}#1`)!.amps).toBeGreaterThan(3.5);
    expect(after.at(state).volts(`${part("R9")}#1`)).toBe(states.at(state).volts(`${part("R9")}#1`));
  });
});
