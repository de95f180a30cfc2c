import { describe, expect, test } from "vitest";
import { bundlesOf } from "../../../src/electrical/operate/bundles.ts";
import { channelsOf } from "../../../src/electrical/operate/channels.ts";
import { lengthsOf } from "../../../src/electrical/operate/lengths.ts";
import type { Harness, RunId } from "../../../src/graph/harness.ts";
import { makeRun } from "../../../src/graph/make.ts";
import { trace } from "../../../src/graph/trace.ts";
import { Build } from "../../build.ts";

const battery = () =>
  new Build()
    .part("supply", "G1", { voltage_V: 12, resistance_ohm: 0.01 })
    .wire("G1.−", "XE1", "BK", { area_mm2: 25, length_m: 0, insulation: "thin-wall-105" });
const wire = (area_mm2: number, length_m: number) => ({
  area_mm2,
  length_m,
  insulation: "thin-wall-105" as const,
});

describe("speaker channels", () => {
  const amplifier = (known: object = {}) =>
    new Build().module("A1", {
      role: "amplifier",
      outputs: "common-negative",
      ...known,
      rows: {
        "1+": "speaker-front-left-plus gives",
        "1-": "speaker-front-left-minus gives",
        "2+": "speaker-front-right-plus gives",
        "2-": "speaker-front-right-minus gives",
      },
    });
  const speaker = { position: "front-left", impedance_ohm: 4 } as const;

  test("4 Ω behind 3 m of 1.5 mm² each way: 79.8 mΩ, −0.172 dB, 1.96 % in the wire", () => {
    const harness = amplifier()
      .part("speaker", "P1", speaker)
      .wire("A1.1+", "P1.+", "WH", wire(1.5, 3))
      .wire("A1.1-", "P1.−", "WH", wire(1.5, 3)).harness;
    const [one] = channelsOf(harness, trace(harness));
    expect(one!.load!.seen.value).toBeCloseTo(4.0798, 4);
    expect(one!.speakers[0]!.loss.level.value).toBeCloseTo(-0.172, 3);
    expect(one!.speakers[0]!.loss.inWire.value).toBeCloseTo(1.956, 2);
    expect([one!.trouble, one!.speakers[0]!.reversed]).toEqual([[], false]);
  });

  test("two of 4 Ω side by side are 2 Ω: below a least load of 4 Ω", () => {
    const harness = amplifier({ leastLoad_ohm: 4, channelPower_W: 50 })
      .part("speaker", "P1", speaker)
      .part("speaker", "P2", { ...speaker, position: "rear-left" })
      .wire("A1.1+", "P1.+", "WH", wire(1.5, 0))
      .wire("A1.1-", "P1.−", "WH", wire(1.5, 0))
      .wire("A1.1+", "P2.−", "WH", wire(1.5, 0))
      .wire("A1.1-", "P2.+", "WH", wire(1.5, 0)).harness;
    const [one] = channelsOf(harness, trace(harness));
    expect(one!.load!.seen.value).toBeCloseTo(2, 3);
    expect(one!.load!.belowLeast).toBe(true);
    // 50 W into 2 Ω is 10 V: 25 W at each cone.
    expect(one!.speakers.map(({ power }) => power.value)).toEqual([
      expect.closeTo(25, 2),
      expect.closeTo(25, 2),
    ]);
    expect(one!.trouble).toEqual([
      expect.stringContaining("2 Ω: below the least load of 4 Ω"),
      "P2: its plus hangs on the minus of A1.1+.",
    ]);
  });

  test("a speaker from one channel's plus to the other's minus bridges them; each half sees half of it", () => {
    const harness = amplifier()
      .part("speaker", "P1", { position: "subwoofer", impedance_ohm: 4 })
      .wire("A1.1+", "P1.+", "WH", wire(4, 0))
      .wire("A1.2-", "P1.−", "WH", wire(4, 0)).harness;
    const found = channelsOf(harness, trace(harness));
    expect(found.map(({ name, isPair, load }) => [name, isPair, load?.eachHalf?.value ?? null])).toEqual([
      ["A1.1+", false, null],
      ["A1.2+", false, null],
      ["A1.1+", true, expect.closeTo(2, 3)],
    ]);
    expect(found[2]!.load!.belowLeast).toBe(false);
  });

  test("two leads that are joined are told; a harness without outputs has no channels", () => {
    const joined = amplifier().wire("A1.1+", "A1.1-", "WH", wire(1.5, 1)).harness;
    expect(channelsOf(joined, trace(joined))[0]!.trouble).toEqual(["A1.1+: its two leads are joined."]);
    expect(channelsOf(battery().harness, trace(battery().harness))).toEqual([]);
  });
});

describe("bundles and lengths", () => {
  const made = (length_m: number | "unknown", known: object) => {
    const build = battery();
    for (let i = 0; i < 3; i++)
      build.wire("G1.+", "loose", "RD", {
        area_mm2: 1.5,
        runs: ["r:1" as RunId],
        insulation: "thin-wall-105",
        ...known,
      });
    const { harness } = build;
    return {
      ...harness,
      runs: {
        ["r:1" as RunId]: makeRun("r:1" as RunId, "B1", {
          covering: "split-loom",
          zone: "cabin",
          length_m,
          passes: [{ what: "", protection: "grommet" }],
        }),
      },
    } as Harness;
  };

  test("three wires of 2.4 mm pack into (1 + 2/√3) × 2.4 = 5.171 mm, over the rule of thumb's 4.988", () => {
    const [bundle] = bundlesOf(made(2, {}), trace(made(2, {})));
    expect(bundle!.wires).toEqual(["w:W2", "w:W3", "w:W4"]);
    expect(bundle!.diameter!.reckoned.value).toBeCloseTo(2.4 * (1 + 2 / Math.sqrt(3)), 3);
    expect(bundle!.covering).toMatchObject({ ok: true, covering: { name: "split loom 7.5 mm inside" } });
    expect(bundle!.grommet).toMatchObject({ ok: true, covering: { name: "grommet 6 mm bore" } });
    expect(bundle!.bendRadius!.value).toBeCloseTo(51.7, 1);
    // Copper alone: 3 × 2 m × 1.5 mm² × 8.89 g/cm³ × 1.02 = 81.6 g, the insulation besides.
    expect(bundle!.mass!.value).toBeGreaterThan(81.6);
    expect(bundle!.mass!.value).toBeLessThan(110);
    expect(bundlesOf(made("unknown", {}), trace(made("unknown", {})))[0]!.mass).toBeNull();
  });

  test("what no table has is named and left out", () => {
    const thick = made(2, { area_mm2: 500 });
    const [bundle] = bundlesOf(thick, trace(thick));
    expect([bundle!.unknown.length, bundle!.diameter]).toEqual([3, null]);
  });

  test("cut: runs and 3 % and 40 mm of ends; or the stated length and its ends; with a price, the cost", () => {
    // 2 m × 1.03 + 0.04 m = 2.10 m.
    const { wires, unknown } = lengthsOf(made(2, {}));
    expect(wires.slice(1).map(({ cut }) => ("unknown" in cut ? null : cut.value))).toEqual([2.1, 2.1, 2.1]);
    expect(unknown).toEqual([]);
    expect(lengthsOf(made("unknown", {})).unknown).toEqual(["w:W2", "w:W3", "w:W4"]);
    const stated = made(2, { length_m: 1.5 });
    const priced = {
      ...stated,
      settings: {
        ...stated.settings,
        electrical: {
          ...stated.settings.electrical,
          terminations_mm: 20,
          prices: [{ area_mm2: 1.5, perMetre: 0.5 }],
          currency: "EUR",
        },
      },
    };
    const [, second] = lengthsOf(priced).wires;
    expect(second).toMatchObject({
      cut: { value: 1.52, doubt: "its stated length is less than its runs, 2 m" },
      cost: { value: 0.76, unit: "EUR" },
    });
    expect(lengthsOf(priced).cost).toBeCloseTo(2.28, 9);
    expect(lengthsOf(priced).bySize.find(({ area_mm2 }) => area_mm2 === 1.5)).toEqual({
      area_mm2: 1.5,
      count: 3,
      total_m: expect.closeTo(4.56, 9),
    });
  });
});
