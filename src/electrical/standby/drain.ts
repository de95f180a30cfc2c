import { type Answer, digits, doubts, type Figure } from "../figure.ts";
import { requireBetween, requireNotNegative, requirePositive } from "../require.ts";

/** One thing that draws with the key off, milliamperes. */
export type Drain = { readonly name: string; readonly drain_mA: number };

/**
 * What all of it draws together with the key off.
 * @returns mA, the largest named first in the formula
 * @throws RangeError for a negative or not finite drain
 */
export function totalDrain(drains: readonly Drain[]): Figure {
  for (const { name, drain_mA } of drains) requireNotNegative(`drain of ${name}`, drain_mA);
  const sorted = [...drains].sort((a, b) => b.drain_mA - a.drain_mA);
  const value = sorted.reduce((sum, { drain_mA }) => sum + drain_mA, 0);
  const parts = sorted.map(({ name, drain_mA }) => `${digits(drain_mA)} mA ${name}`);
  return {
    value,
    unit: "mA",
    formula: `${parts.length === 0 ? "nothing draws" : parts.join(" + ")} = ${digits(value)} mA`,
    table: null,
    source: "sum of the parts",
    doubt: null,
  };
}

export type BatteryState = {
  /** Rated capacity, ampere-hours, above 0. */
  readonly capacity_Ah: number;
  /** State of charge at the start and where counting stops, per cent of capacity. */
  readonly from_percent: number;
  readonly to_percent: number;
  /** What the battery loses by itself, per cent of capacity a month; 0 leaves it out. */
  readonly selfDischarge_percentPerMonth: number;
};

/** Lead-acid, moderate temperature. Sources run from 4 to 6 % a month; one says 1 % a day. */
export const USUAL_SELF_DISCHARGE_percentPerMonth = 5;
/** Charge a starting battery can give and still start the engine; a service bulletin's figure at 25 °C. */
export const USABLE_TO_NO_START_percent = 40;

const HOURS_PER_MONTH = 8766 / 12;

/**
 * Days until a parked battery is down to a chosen state of charge.
 * @param drain_mA key-off drain, 0 or more
 * @returns days, or unknown where nothing drains it
 * @throws RangeError for NaN, a capacity not above 0, a state of charge outside 0 to 100, or an end above the start
 * @source capacity over current
 */
export function daysToCharge(battery: BatteryState, drain_mA: number): Answer {
  const { capacity_Ah, from_percent, to_percent, selfDischarge_percentPerMonth } = battery;
  requirePositive("capacity_Ah", capacity_Ah);
  requireBetween("from_percent", from_percent, 0, 100);
  requireBetween("to_percent", to_percent, 0, from_percent);
  requireBetween("selfDischarge_percentPerMonth", selfDischarge_percentPerMonth, 0, 100);
  requireNotNegative("drain_mA", drain_mA);
  const self_mA = ((capacity_Ah * selfDischarge_percentPerMonth) / 100 / HOURS_PER_MONTH) * 1000;
  const current_mA = drain_mA + self_mA;
  if (current_mA === 0) return { unknown: "nothing drains the battery" };
  const share = (from_percent - to_percent) / 100;
  const value = (capacity_Ah * share * 1000) / current_mA / 24;
  const self = self_mA === 0 ? "" : ` + ${digits(self_mA, 3)} mA of its own`;
  return {
    value,
    unit: "days",
    formula: `${digits(capacity_Ah)} Ah × (${digits(from_percent)} − ${digits(to_percent)}) % / (${digits(drain_mA)} mA${self}) / 24 h = ${digits(value, 3)} days`,
    table: null,
    source: "capacity over current",
    doubt: doubts(
      "takes a battery that still has its rated capacity; an old or cold one has less",
      self_mA === 0
        ? null
        : "self-discharge of lead-acid is given as 4 to 6 % a month, and doubles with heat",
    ),
  };
}
