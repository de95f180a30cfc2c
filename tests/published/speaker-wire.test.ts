import { describe, expect, test } from "vitest";
import { type AwgName, awgArea_mm2 } from "../../src/catalogue/conductors.ts";
import { conductorResistance } from "../../src/electrical/conductor/resistance.ts";
import { channelLoad, idealSinePower } from "../../src/electrical/speaker/channel.ts";
import { impedanceSeen, powerAtCones, type SpeakerNet } from "../../src/electrical/speaker/network.ts";
import { summedLevel } from "../../src/electrical/speaker/polarity.ts";
import { speakerWireLoss } from "../../src/electrical/speaker/wire-loss.ts";

const speaker = (impedance_ohm: number, wire_ohm = 0): SpeakerNet => ({
  kind: "speaker",
  name: `${impedance_ohm} Ω`,
  impedance_ohm,
  wire_ohm,
});
const parallel = (...of: SpeakerNet[]): SpeakerNet => ({ kind: "parallel", of });
const series = (...of: SpeakerNet[]): SpeakerNet => ({ kind: "series", of });

// Source: circuit law, the usual combinations.
test.each([
  ["4 beside 4", parallel(speaker(4), speaker(4)), 2],
  ["4 beside 8", parallel(speaker(4), speaker(8)), 8 / 3],
  ["8 beside 8", parallel(speaker(8), speaker(8)), 4],
  ["4 after 4", series(speaker(4), speaker(4)), 8],
  ["two pairs of 4", parallel(series(speaker(4), speaker(4)), series(speaker(4), speaker(4))), 4],
])("%s: %s Ω", (_name, net, seen) => {
  expect(impedanceSeen(net).value).toBeCloseTo(seen, 12);
});

function loop_ohm(gauge: AwgName, each_m: number): number {
  const metal = {
    area_mm2: awgArea_mm2(gauge),
    temperature_degC: 20,
    material: "copper",
    basis: "solid",
  } as const;
  return conductorResistance(metal, 2 * each_m).value;
}

// Source: IACS copper at 20 °C; level 20 log₁₀(Z/(Z+R)), share in the wire R/(Z+R). Gauge, metres each way, mΩ, then dB and
// per cent at 4 Ω.
test.each([
  ["18", 1.5, 62.84, -0.135, 1.55],
  ["18", 5, 209.48, -0.443, 4.98],
  ["16", 3, 79.05, -0.17, 1.94],
  ["14", 5, 82.85, -0.178, 2.03],
  ["12", 10, 104.21, -0.223, 2.54],
] as const)("AWG %s, %f m: %f mΩ, %f dB and %f %% at 4 Ω", (gauge, each_m, milliohm, level_dB, lost) => {
  const loop = loop_ohm(gauge, each_m);
  expect(loop * 1000).toBeCloseTo(milliohm, 1);
  const { level, inWire, missed } = speakerWireLoss(4, loop);
  expect(level.value).toBeCloseTo(level_dB, 3);
  expect(inWire.value).toBeCloseTo(lost, 2);
  expect(missed.value / inWire.value).toBeGreaterThan(1.9);
});

// Source: an installer's page: dB lost over a 100 ft run at 4, 8 and 16 Ω. Its resistance is about 4 % above IACS solid.
test.each([
  ["16", [1.65, 0.86, 0.44]],
  ["18", [2.49, 1.33, 0.69]],
] as const)("100 ft of AWG %s within 5 %% of the installer's table", (gauge, printed) => {
  [4, 8, 16].forEach((ohms, index) => {
    const { level } = speakerWireLoss(ohms, loop_ohm(gauge, 30.48));
    expect(Math.abs(-level.value / printed[index]! - 1)).toBeLessThan(0.05);
  });
});

// Source: an amplifier's manual: 160 ft of 10 AWG at 0.00204 Ω/ft the pair, 8 Ω, 24.5 V: 72 W out, 69 W at the speaker.
describe("an amplifier manual's example", () => {
  const watts = (impedance: number, ohmPerFoot: number) => {
    const wire = 160 * ohmPerFoot;
    const [cone] = powerAtCones(speaker(impedance, wire), 24.5);
    const out = 24.5 ** 2 / (impedance + wire);
    return { out, cone: cone!.power.value, wire: out - cone!.power.value };
  };

  test("10 AWG: 72 W, 69 W, 3 W", () => {
    const { out, cone, wire } = watts(8, 0.00204);
    expect([Math.round(out), Math.round(cone), Math.round(wire)]).toEqual([72, 69, 3]);
  });

  // The manual goes on by simple proportion and prints 12.27 W and 58.5 W: wrong, for the current falls as well.
  test("16 AWG: not the printed 12.27 W in the wire but 9.07 W", () => {
    expect(watts(8, 0.00819).wire).toBeCloseTo(9.07, 2);
  });
  test("18 AWG and 4 Ω: not the printed 58.5 W in the wire but 33.8 W", () => {
    expect(watts(4, 0.01302).wire).toBeCloseTo(33.8, 1);
  });
});

// Source: bridge-tied load, amplifier application notes: each half sees half the load.
test("4 Ω over a bridge is 2 Ω for each half", () => {
  expect(channelLoad({ net: speaker(4), least_ohm: 4, bridged: true })).toMatchObject({
    eachHalf: { value: 2 },
    belowLeast: false,
    floating: true,
  });
});

// Source: V²/2R: from 14.4 V a bridge gives 25.9 W of sine in 4 Ω, one half 6.5 W.
test("ideal sine power", () => {
  expect(idealSinePower(14.4, 4, true).value).toBeCloseTo(25.9, 1);
  expect(idealSinePower(14.4, 4, false).value).toBeCloseTo(6.5, 1);
});

// Source: sum of coherent pressures: +6.02 dB; cancelled; −19.3 dB where one is 1 dB quieter.
test("two speakers in and out of phase", () => {
  expect(summedLevel(0, false).value).toBeCloseTo(6.02, 2);
  expect(summedLevel(0, true).value).toBe(Number.NEGATIVE_INFINITY);
  expect(summedLevel(1, true).value).toBeCloseTo(-19.3, 1);
});
