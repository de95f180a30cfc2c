import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { functionOf } from "../../../src/catalogue/functions.ts";
import { designStates, KEY_POSITIONS, type KeyState } from "../../../src/electrical/operate/key-state.ts";
import { operate } from "../../../src/electrical/operate/operate.ts";
import type { Readings } from "../../../src/electrical/operate/readings.ts";
import { wattsOf } from "../../../src/electrical/solve/solve.ts";
import type { Harness, Part, PartId, WireId } from "../../../src/graph/harness.ts";
import { parse } from "../../../src/graph/parse/parse.ts";
import { trace } from "../../../src/graph/trace.ts";
import { Dice, randomHarness } from "../../graph/random.ts";
import { astray_A } from "./ask.ts";

const NAMES = [
  "constant-feed",
  "switched-feed",
  "ground",
  "illumination",
  "reverse",
  "amplifier-turn-on",
  "parking-brake",
  "indicator-left",
  "unknown",
];
const DIRECTIONS = ["gives", "takes", "both", "unknown"] as const;

/** A random harness whose parts say something of themselves, so that currents flow in about half of them. */
function livelyHarness(seed: number): Harness {
  const dice = new Dice(seed);
  const harness = randomHarness(dice, 24);
  const parts = Object.fromEntries(
    Object.values(harness.parts).map((part) => [part.id, lively(dice, part)]),
  ) as Record<PartId, Part>;
  return { ...harness, parts };
}

function lively(dice: Dice, part: Part): Part {
  switch (part.kind) {
    case "connector":
    case "module":
      return {
        ...part,
        cavities: part.cavities.map((cavity) => ({
          ...cavity,
          function: functionOf(dice.pick(NAMES)).id,
          direction: dice.pick(DIRECTIONS),
          current_A: dice.pick(["unknown", 0, 0.2, 3, 40] as const),
          fuse_A: dice.pick(["unknown", null, 10] as const),
        })),
      };
    case "load":
      return {
        ...part,
        current_A: dice.pick(["unknown", 0, 0.5, 8] as const),
        behaviour: dice.pick([
          "unknown",
          "resistance",
          "constant-current",
          "constant-power",
          "filament",
        ] as const),
        polarised: dice.chance(0.4),
        standby_A: dice.pick(["unknown", 0, 0.01] as const),
      };
    case "fuse":
      return { ...part, rating_A: dice.pick(["unknown", 5, 30] as const) };
    case "relay":
      return { ...part, suppression: dice.pick(["none", "diode", "resistor"] as const) };
    case "resistor":
      return { ...part, resistance_ohm: dice.pick(["unknown", 0, 120] as const) };
    default:
      return part;
  }
}

function randomState(dice: Dice, harness: Harness): KeyState {
  return dice.chance(0.5)
    ? {
        key: dice.pick(KEY_POSITIONS),
        conditions: dice.some(["lights-on", "reverse", "unit-on", "switches-on"], 0.5),
      }
    : dice.pick(designStates(harness));
}

/** Every number in the readings, with the place that it stands at. */
function* numbersIn(value: unknown, place: string): Generator<readonly [string, number]> {
  if (typeof value === "number") yield [place, value];
  else if (value instanceof Map)
    for (const [key, inner] of value) yield* numbersIn(inner, `${place}.${String(key)}`);
  else if (typeof value === "object" && value !== null && !ArrayBuffer.isView(value))
    for (const [key, inner] of Object.entries(value)) yield* numbersIn(inner, `${place}.${key}`);
}

function notNumbers({ solved: _, ...shown }: Readings): readonly string[] {
  return [...numbersIn(shown, "readings")]
    .filter(([, value]) => !Number.isFinite(value))
    .map(([place]) => place);
}

/** The largest current anywhere: what a law may be off by is a share of it. */
function largest_A({ solved }: Readings): number {
  return solved.solution.amps.reduce((most, amps) => Math.max(most, Math.abs(amps)), 0);
}

const onRandom = (law: (harness: Harness, state: KeyState, dice: Dice) => void, numRuns = 300) =>
  fc.assert(
    fc.property(fc.integer(), (seed) => {
      const harness = livelyHarness(seed);
      const dice = new Dice(seed + 1);
      law(harness, randomState(dice, harness), dice);
    }),
    { numRuns, seed: 40_404 },
  );

describe("on random harnesses", () => {
  test("what flows into a contact flows out of it, and nothing is NaN", () => {
    let carrying = 0;
    onRandom((harness, state) => {
      const readings = operate(harness, trace(harness), state);
      expect(notNumbers(readings)).toEqual([]);
      const most_A = largest_A(readings);
      expect(astray_A(readings)).toBeLessThanOrEqual(1e-8 + most_A * 1e-9);
      if (most_A > 0.01) carrying++;
    });
    expect(carrying).toBeGreaterThan(30);
  });

  test("what the sources give is what everything else takes", () => {
    onRandom((harness, state) => {
      const { solved } = operate(harness, trace(harness), state);
      const watts = wattsOf(solved.built.circuit, solved.solution);
      const sum = watts.reduce((total, one) => total + one, 0);
      const through = watts.reduce((total, one) => total + Math.abs(one), 0);
      expect(Math.abs(sum)).toBeLessThanOrEqual(1e-7 + through * 1e-9);
    });
  });

  test("taking away a ground, or any wire or part, gives an answer and no NaN", () => {
    onRandom((harness, state, dice) => {
      const ids = [...Object.keys(harness.parts), ...Object.keys(harness.wires)];
      const grounds = Object.values(harness.parts).filter((part) => part.kind === "ground");
      const broken = [...grounds.map((part) => part.id), ...dice.some(ids, 0.2)];
      const traced = trace(harness);
      const before = operate(harness, traced, state);
      const readings = operate(harness, traced, state, { before, broken });
      expect(notNumbers(readings)).toEqual([]);
      for (const id of broken) expect(readings.wires.get(id as WireId)?.amps ?? 0).toBeCloseTo(0, 12);
    }, 200);
  });

  test("the answer does not hang on what was known before, and the same harness gives the same bits", () => {
    onRandom((harness, state, dice) => {
      const traced = trace(harness);
      const fresh = operate(harness, traced, state);
      const again = operate(harness, traced, state);
      expect(again.solved.solution.amps).toEqual(fresh.solved.solution.amps);
      if (fresh.warnings.some(({ code }) => code === "box-restless" || code === "not-settled")) return;
      const other = operate(harness, traced, randomState(dice, harness));
      const warm = operate(harness, traced, state, { before: other });
      const most_A = largest_A(fresh);
      for (const [id, wire] of fresh.wires)
        expect(Math.abs(warm.wires.get(id)!.amps - wire.amps)).toBeLessThanOrEqual(1e-6 + most_A * 1e-6);
    }, 150);
  });
});

test("a thicker wire never drops more", () => {
  fc.assert(
    fc.property(fc.integer(), (seed) => {
      const dice = new Dice(seed);
      const harness = livelyHarness(seed);
      const ids = Object.keys(harness.wires) as WireId[];
      if (ids.length === 0) return;
      // Steady loads and no relays: there the sum has one answer, and no box falls asleep on the way.
      const parts = Object.fromEntries(
        Object.entries(harness.parts).map(([id, part]) => [
          id,
          part.kind === "load" ? { ...part, behaviour: "resistance" as const, polarised: false } : part,
        ]),
      ) as Harness["parts"];
      if (Object.values(parts).some((part) => part.kind === "relay" || part.kind === "diode")) return;
      const id = dice.pick(ids);
      const drops = [0.5, 0.75, 1.5, 4, 16].map((area_mm2) => {
        const wires = { ...harness.wires, [id]: { ...harness.wires[id]!, area_mm2 } };
        const made = { ...harness, parts, wires };
        const readings = operate(made, trace(made), { key: "run", conditions: ["switches-on"] });
        return { drop_V: readings.wires.get(id)!.drop_V, awake: JSON.stringify([...readings.awake]) };
      });
      if (drops.some(({ awake }) => awake !== drops[0]!.awake)) return;
      for (let i = 1; i < drops.length; i++)
        expect(drops[i]!.drop_V).toBeLessThanOrEqual(drops[i - 1]!.drop_V * (1 + 1e-6) + 1e-9);
    }),
    { numRuns: 200, seed: 40_405 },
  );
});

describe("the samples", () => {
  const folder = new URL("../../../samples/", import.meta.url);
  const names = readdirSync(folder).filter((name) => name.endsWith(".harness.json"));

  test.each(names)("%s is solved in every state, without NaN, and nothing in it is harmed", (name) => {
    const result = parse(readFileSync(new URL(name, folder), "utf8"));
    if (!result.ok) throw new Error(name);
    const { harness } = result;
    const traced = trace(harness);
    let before: Readings | null = null;
    for (const state of designStates(harness)) {
      const readings: Readings = operate(harness, traced, state, { before });
      before = readings;
      expect(notNumbers(readings)).toEqual([]);
      expect(astray_A(readings)).toBeLessThan(1e-7);
      const harmful = readings.warnings.filter(
        ({ code }) => code !== "fuse-full" && code !== "load-starved" && code !== "output-at-limit",
      );
      expect(harmful, JSON.stringify(state)).toEqual([]);
    }
  });
});
