import fc from "fast-check";
import { expect, test } from "vitest";
import { type InStates, inStates } from "../../../../src/electrical/operate/in-states/in-states.ts";
import type { StateView } from "../../../../src/electrical/operate/in-states/state-view.ts";
import { operate } from "../../../../src/electrical/operate/operate.ts";
import type { Readings, Volts } from "../../../../src/electrical/operate/readings.ts";
import type { Harness, PartId, WireId } from "../../../../src/graph/harness.ts";
import { trace } from "../../../../src/graph/trace.ts";
import { contactsIn, livelyEdit, livelyHarness } from "./lively.ts";

const seeds = fc.integer({ min: 0, max: 2 ** 31 - 1 });

/** What has more than one answer, or none, is told apart by warnings; there two ways to it may end elsewhere. */
function isOpenQuestion({ warnings, solved }: Readings): boolean {
  return (
    warnings.some(({ code }) =>
      ["relays-race", "relay-chatters", "box-restless", "not-settled"].includes(code),
    ) || solved.solution.warnings.some(({ kind }) => kind === "undivided-current")
  );
}

function expectAlike(harness: Harness, view: StateView, readings: Readings): void {
  const most_A = readings.solved.solution.amps.reduce((most, amps) => Math.max(most, Math.abs(amps)), 0);
  const near = (one: number, other: number, what: string) => {
    if (Math.abs(one - other) > 1e-6 + most_A * 1e-6) expect(`${what}: ${one}`).toBe(`${what}: ${other}`);
  };
  const nearVolts = (one: Volts, other: Volts, what: string) =>
    typeof one === "number" && typeof other === "number"
      ? near(one, other, what)
      : expect(`${what}: ${one}`).toBe(`${what}: ${other}`);
  for (const key of contactsIn(harness)) {
    nearVolts(view.volts(key), readings.contacts.get(key)!, `volts at ${key}`);
    const [load, loadRead] = [view.load(key), readings.loads.get(key)];
    expect(load === null, `load at ${key}`).toBe(loadRead === undefined);
    if (load && loadRead) {
      near(load.volts, loadRead.volts, `load's volts at ${key}`);
      near(load.amps, loadRead.amps, `load's amperes at ${key}`);
      expect([load.works, load.reversed, load.stated_A, load.part]).toEqual([
        loadRead.works,
        loadRead.reversed,
        loadRead.stated_A,
        loadRead.part,
      ]);
    }
    const [source, sourceRead] = [view.source(key), readings.sources.get(key)];
    expect(source === null, `source at ${key}`).toBe(sourceRead === undefined);
    if (source && sourceRead) {
      nearVolts(source.volts, sourceRead.volts, `source's volts at ${key}`);
      near(source.amps, sourceRead.amps, `source's amperes at ${key}`);
      expect([source.limit_A, source.limitedBy]).toEqual([sourceRead.limit_A, sourceRead.limitedBy]);
    }
  }
  for (const [id, wire] of readings.wires) {
    near(view.amps(id), wire.amps, `amperes in ${id}`);
    const percent = view.percentOfAmpacity(id);
    if (wire.percentOfAmpacity !== null && percent !== null)
      expect(Math.abs(percent - wire.percentOfAmpacity)).toBeLessThan(0.01 + wire.percentOfAmpacity * 1e-3);
  }
  for (const id of Object.keys(harness.parts) as PartId[]) {
    const [fuse, relay] = [readings.fuses.get(id), readings.relays.get(id)];
    expect(view.fuse_A(id) === null).toBe(fuse === undefined);
    if (fuse) near(view.fuse_A(id)!, fuse.amps, `amperes in fuse ${id}`);
    expect(view.relay(id)?.pulledIn).toBe(relay?.pulled);
    if (relay) near(view.relay(id)!.coil_A, relay.coil_A, `amperes in coil ${id}`);
  }
  for (const [unit, awake] of readings.awake) expect(view.isAwake(unit)).toBe(awake);
  const told = (list: Readings["warnings"]) =>
    list.map(({ code, about }) => [code, ...about.slice(0, 1)].join(" ")).sort();
  expect(told(view.warnings)).toEqual(told(readings.warnings));
}

/** Compares all states with `operate` from scratch. @returns how many were told apart, and how many carry current */
function compare(harness: Harness, states: InStates): { compared: number; carrying: number } {
  const traced = trace(harness);
  let [compared, carrying] = [0, 0];
  for (const state of states.states) {
    const readings = operate(harness, traced, state);
    if (isOpenQuestion(readings)) continue;
    expectAlike(harness, states.at(state), readings);
    compared++;
    if ([...readings.wires.values()].some(({ amps }) => Math.abs(amps) > 0.01)) carrying++;
  }
  return { compared, carrying };
}

test("every state shows what operate shows from scratch, after each of many edits", () => {
  let [compared, carrying] = [0, 0];
  fc.assert(
    fc.property(seeds, (seed) => {
      let { dice, harness } = livelyHarness(seed);
      let states = inStates(harness, trace(harness));
      for (let step = 0; step < 4; step++) {
        const found = compare(harness, states);
        compared += found.compared;
        carrying += found.carrying;
        harness = livelyEdit(dice, harness);
        states = inStates(harness, trace(harness), states);
      }
    }),
    { numRuns: 25, seed: 20261125 },
  );
  expect(compared).toBeGreaterThan(200);
  expect(carrying).toBeGreaterThan(200);
});

test("what was known before an edit leaves no mark: the same bits as from scratch", () => {
  fc.assert(
    fc.property(seeds, (seed) => {
      let { dice, harness } = livelyHarness(seed);
      let states = inStates(harness, trace(harness));
      for (let step = 0; step < 6; step++) {
        for (const key of contactsIn(harness)) states.at(states.states[step % 3]!).volts(key);
        harness = livelyEdit(dice, harness);
        states = inStates(harness, trace(harness), states);
      }
      const fresh = inStates(harness, trace(harness));
      expect(states.states).toEqual(fresh.states);
      for (const state of fresh.states) {
        const [warm, cold] = [states.at(state), fresh.at(state)];
        for (const key of contactsIn(harness)) expect(warm.volts(key)).toBe(cold.volts(key));
        for (const id of Object.keys(harness.wires) as WireId[]) {
          expect(warm.amps(id)).toBe(cold.amps(id));
          expect(states.mostThrough(id)).toEqual(fresh.mostThrough(id));
        }
        expect(warm.warnings).toEqual(cold.warnings);
      }
    }),
    { numRuns: 40, seed: 20261126 },
  );
});

test("with a part or a wire opened it shows what operate shows with that one broken", () => {
  let compared = 0;
  fc.assert(
    fc.property(seeds, (seed) => {
      const { dice, harness } = livelyHarness(seed);
      const traced = trace(harness);
      const states = inStates(harness, traced);
      const state = dice.pick(states.states);
      const parts = (Object.keys(harness.parts) as PartId[]).map((part) => ({ part }));
      const wires = (Object.keys(harness.wires) as WireId[]).map((wire) => ({ wire }));
      const grounds = parts.filter(({ part }) => harness.parts[part]!.kind === "ground");
      for (const what of [...grounds, ...dice.some([...parts, ...wires], 0.15)]) {
        const broken = ["part" in what ? what.part : what.wire];
        const readings = operate(harness, traced, state, { broken });
        if (isOpenQuestion(readings)) continue;
        expectAlike(harness, states.withOpen(what, state), readings);
        compared++;
      }
    }),
    { numRuns: 100, seed: 20261127 },
  );
  expect(compared).toBeGreaterThan(300);
});

test("the most through a wire is the most that operate finds", () => {
  fc.assert(
    fc.property(seeds, (seed) => {
      const { harness } = livelyHarness(seed);
      const traced = trace(harness);
      const states = inStates(harness, traced);
      const all = states.states.map((state) => operate(harness, traced, state));
      if (all.some(isOpenQuestion)) return;
      for (const id of Object.keys(harness.wires) as WireId[]) {
        const most = Math.max(...all.map(({ wires }) => Math.abs(wires.get(id)!.amps)));
        expect(Math.abs(states.mostThrough(id).amps - most)).toBeLessThan(1e-6 + most * 1e-4);
      }
    }),
    { numRuns: 30, seed: 20261128 },
  );
});
