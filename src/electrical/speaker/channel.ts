import { digits, type Figure } from "../figure.ts";
import { requirePositive } from "../require.ts";
import { impedanceSeen, type SpeakerNet } from "./network.ts";

/** Least loads where the plate says nothing. @source common practice, no source */
export const USUAL_LEAST_LOAD_ohm = { headUnit: 4, amplifier: 2, bridged: 4 } as const;

export type ChannelTask = {
  readonly net: SpeakerNet;
  /** Least load the plate allows, Ω: per channel, or for the bridged pair where `bridged`. */
  readonly least_ohm: number;
  /** Driven from both ends, by two outputs in opposite phase. */
  readonly bridged: boolean;
};

export type ChannelLoad = {
  readonly seen: Figure;
  /** What each of the two outputs of a bridge sees; `null` where not bridged. */
  readonly eachHalf: Figure | null;
  readonly belowLeast: boolean;
  /** Neither terminal may touch ground, nor a wire that goes there. */
  readonly floating: boolean;
  readonly why: string;
};

/**
 * The load a channel sees, against the least it allows.
 * @throws RangeError for an empty network or a least load not above 0
 * @source a bridged half sees half the load: amplifier application notes
 */
export function channelLoad(task: ChannelTask): ChannelLoad {
  requirePositive("least_ohm", task.least_ohm);
  const seen = impedanceSeen(task.net);
  const half = seen.value / 2;
  const eachHalf: Figure | null = task.bridged
    ? {
        ...seen,
        value: half,
        formula: `Z / 2 = ${digits(seen.value)} Ω / 2 = ${digits(half)} Ω`,
        source:
          "an amplifier maker's application note: with equal and opposite outputs each sees half the load",
      }
    : null;
  // Wire only adds; a network that adds up to the least load on paper is not below it.
  const belowLeast = seen.value < task.least_ohm * (1 - 1e-9);
  const halves = eachHalf ? `, ${digits(half)} Ω for each half` : "";
  const verdict = belowLeast ? "below" : "not below";
  return {
    seen,
    eachHalf,
    belowLeast,
    floating: task.bridged,
    why: `${digits(seen.value)} Ω${halves}: ${verdict} the least load of ${digits(task.least_ohm)} Ω${task.bridged ? " bridged" : ""}`,
  };
}

/**
 * Most sine power of an ideal output from a supply: the swing is the supply (bridged) or half of it.
 * @param supply_V above 0; @param load_ohm above 0
 * @returns watts
 * @throws RangeError for NaN or numbers not above 0
 * @source P = Û² / 2R; a bridge swings twice as far, which is four times the power
 */
export function idealSinePower(supply_V: number, load_ohm: number, bridged: boolean): Figure {
  requirePositive("supply_V", supply_V);
  requirePositive("load_ohm", load_ohm);
  const peak_V = bridged ? supply_V : supply_V / 2;
  const value = peak_V ** 2 / (2 * load_ohm);
  return {
    value,
    unit: "W",
    formula: `P = Û² / 2R = (${digits(peak_V)} V)² / (2 × ${digits(load_ohm)} Ω) = ${digits(value)} W`,
    table: null,
    source: "peak of a sine; an ideal output that swings to its rails",
    doubt: "real outputs lose a volt or two at each rail, so this is the ceiling",
  };
}
