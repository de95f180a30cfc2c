import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { channelLoad, idealSinePower } from "../../../src/electrical/speaker/channel.ts";
import { impedanceSeen, powerAtCones, type SpeakerNet } from "../../../src/electrical/speaker/network.ts";
import { summedLevel } from "../../../src/electrical/speaker/polarity.ts";
import { speakerWireLoss } from "../../../src/electrical/speaker/wire-loss.ts";

const speaker = (name: string, impedance_ohm: number, wire_ohm = 0): SpeakerNet => ({
  kind: "speaker",
  name,
  impedance_ohm,
  wire_ohm,
});

test("the formula shows the network with its wires", () => {
  const net: SpeakerNet = {
    kind: "parallel",
    of: [speaker("B1", 4, 0.1), { kind: "series", of: [speaker("B2", 4), speaker("B3", 8)] }],
  };
  const seen = impedanceSeen(net);
  expect(seen.formula).toBe("((4 + 0.1 wire) ∥ (4 + 8)) = 3.056 Ω");
  expect(seen.value).toBeCloseTo(1 / (1 / 4.1 + 1 / 12), 12);
});

test("each cone gets its share", () => {
  const net: SpeakerNet = { kind: "series", of: [speaker("B1", 4), speaker("B2", 8)] };
  const cones = powerAtCones(net, 12);
  expect(cones.map(({ name, volts, power }) => [name, volts, power.value])).toEqual([
    ["B1", 4, 4],
    ["B2", 8, 8],
  ]);
});

const anyNet: fc.Arbitrary<SpeakerNet> = fc.letrec<{ net: SpeakerNet; leaf: SpeakerNet; group: SpeakerNet }>(
  (tie) => ({
    net: fc.oneof({ maxDepth: 3 }, tie("leaf"), tie("group")),
    leaf: fc.record({
      kind: fc.constant("speaker" as const),
      name: fc.constant("B"),
      impedance_ohm: fc.double({ min: 1, max: 16, noNaN: true }),
      wire_ohm: fc.double({ min: 0, max: 1, noNaN: true }),
    }),
    group: fc.record({
      kind: fc.constantFrom("series" as const, "parallel" as const),
      of: fc.array(tie("net"), { minLength: 1, maxLength: 3 }),
    }),
  }),
).net;

/** What the wires of a network turn to heat, by Kirchhoff from the cones' own volts. */
function wireWatts(net: SpeakerNet, cones: readonly { volts: number }[]): number {
  const leaves: Extract<SpeakerNet, { kind: "speaker" }>[] = [];
  const collect = (one: SpeakerNet): void => {
    if (one.kind === "speaker") leaves.push(one);
    else for (const part of one.of) collect(part);
  };
  collect(net);
  return leaves.reduce(
    (sum, leaf, i) => sum + (cones[i]!.volts / leaf.impedance_ohm) ** 2 * leaf.wire_ohm,
    0,
  );
}

test("what the amplifier gives is what cones and wires take", () => {
  fc.assert(
    fc.property(anyNet, fc.double({ min: 0.1, max: 60, noNaN: true }), (net, volts) => {
      const cones = powerAtCones(net, volts);
      const given = volts ** 2 / impedanceSeen(net).value;
      const taken = cones.reduce((sum, { power }) => sum + power.value, 0) + wireWatts(net, cones);
      expect(taken / given).toBeCloseTo(1, 9);
    }),
    { seed: 4, numRuns: 200 },
  );
});

describe("the load of a channel", () => {
  const pair: SpeakerNet = { kind: "parallel", of: [speaker("B1", 4), speaker("B2", 4)] };

  test("two 4 Ω speakers side by side are too much for a 4 Ω channel", () => {
    const load = channelLoad({ net: pair, least_ohm: 4, bridged: false });
    expect(load).toMatchObject({ belowLeast: true, eachHalf: null, floating: false });
    expect(load.why).toBe("2 Ω: below the least load of 4 Ω");
  });

  test("just the least load is not below it, however it adds up", () => {
    const thirds: SpeakerNet = {
      kind: "parallel",
      of: [speaker("a", 12), speaker("b", 12), speaker("c", 12)],
    };
    expect(channelLoad({ net: thirds, least_ohm: 4, bridged: false }).belowLeast).toBe(false);
  });

  test("bridged, each half sees half", () => {
    const load = channelLoad({ net: pair, least_ohm: 4, bridged: true });
    expect(load).toMatchObject({ belowLeast: true, eachHalf: { value: 1 } });
    expect(load.why).toContain("1 Ω for each half");
  });
});

test("a bridge gives four times the power of one half", () => {
  expect(idealSinePower(13.8, 4, true).value / idealSinePower(13.8, 4, false).value).toBeCloseTo(4, 12);
});

test("the three ways to state a wire's loss agree with each other", () => {
  const { level, inWire, missed } = speakerWireLoss(4, 0.2);
  expect(10 ** (level.value / 10)).toBeCloseTo(1 - missed.value / 100, 12);
  expect(10 ** (level.value / 20)).toBeCloseTo(1 - inWire.value / 100, 12);
  expect(speakerWireLoss(4, 0)).toMatchObject({
    level: { value: 0 },
    inWire: { value: 0 },
    missed: { value: 0 },
  });
});

test.each([
  ["an empty network", () => impedanceSeen({ kind: "series", of: [] })],
  ["an impedance of 0", () => impedanceSeen(speaker("B", 0))],
  ["a wire below 0", () => impedanceSeen(speaker("B", 4, -0.1))],
  ["no voltage", () => powerAtCones(speaker("B", 4), Number.NaN)],
  [
    "a bad speaker deep in a network",
    () => powerAtCones({ kind: "parallel", of: [speaker("B", Number.NaN)] }, 1),
  ],
  ["a least load of 0", () => channelLoad({ net: speaker("B", 4), least_ohm: 0, bridged: false })],
  ["a loss in 0 Ω", () => speakerWireLoss(0, 1)],
  ["a negative loop", () => speakerWireLoss(4, -1)],
  ["no supply", () => idealSinePower(0, 4, true)],
  ["a negative difference", () => summedLevel(-1, true)],
])("refuses %s", (_name, run) => {
  expect(run).toThrow(RangeError);
});
