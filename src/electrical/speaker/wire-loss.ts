import { digits, type Figure } from "../figure.ts";
import { requireNotNegative, requirePositive } from "../require.ts";

/** Three ways to say what a speaker's wire takes. The last is about twice the second: always say which is shown. */
export type SpeakerWireLoss = {
  /** How much quieter, dB; 0 or negative. */
  readonly level: Figure;
  /** Of the power that the amplifier gives, the share that warms the wire, %. */
  readonly inWire: Figure;
  /** Of the power that the speaker would have had without wire, the share that it misses, %. */
  readonly missed: Figure;
};

/**
 * What the wire of a speaker costs.
 * @param impedance_ohm nominal, above 0
 * @param loop_ohm both wires together, 0 or more
 * @throws RangeError for NaN or numbers out of range
 * @source voltage divider: dB = 20 log₁₀(Z / (Z + R))
 */
export function speakerWireLoss(impedance_ohm: number, loop_ohm: number): SpeakerWireLoss {
  requirePositive("impedance_ohm", impedance_ohm);
  requireNotNegative("loop_ohm", loop_ohm);
  const kept = impedance_ohm / (impedance_ohm + loop_ohm);
  const z = digits(impedance_ohm);
  const r = digits(loop_ohm);
  const common = {
    table: null,
    source: "voltage divider of the wire and the nominal impedance",
    doubt: null,
  };
  const level = 20 * Math.log10(kept);
  const inWire = (1 - kept) * 100;
  const missed = (1 - kept ** 2) * 100;
  return {
    level: {
      ...common,
      value: level,
      unit: "dB",
      formula: `20 log₁₀(Z / (Z + R)) = 20 log₁₀(${z} / (${z} + ${r})) = ${digits(level, 3)} dB`,
    },
    inWire: {
      ...common,
      value: inWire,
      unit: "%",
      formula: `R / (Z + R) = ${r} / (${z} + ${r}) = ${digits(inWire, 3)} % of the amplifier's power stays in the wire`,
    },
    missed: {
      ...common,
      value: missed,
      unit: "%",
      formula: `1 − (Z / (Z + R))² = 1 − (${z} / (${z} + ${r}))² = ${digits(missed, 3)} % less power at the speaker`,
    },
  };
}

/** How much wire is too much, by who says so. */
export const SPEAKER_WIRE_LIMITS = [
  { loopShare_percent: 3.5, level_dB: -0.3, source: "a pro-audio cable table's target" },
  { loopShare_percent: 5, level_dB: -0.42, source: "an audio supplier's guide" },
  { loopShare_percent: 10, level_dB: -0.83, source: "another audio supplier's guide" },
] as const;
