import { digits, type Figure } from "../figure.ts";
import { requireNotNegative } from "../require.ts";

export type CutTask = {
  /** Lengths of the runs that the wire follows, metres. */
  readonly runs_m: readonly number[];
  /** Share added for the way a wire winds through a bundle, in per cent of the runs. */
  readonly slack_percent: number;
  /** Added whole, metres: a service loop, a tail to the connector. */
  readonly extra_m: number;
  /** What each end takes: strip length, and what is lost when a terminal is fitted twice; millimetres. */
  readonly termination_mm: readonly [number, number];
};

/** Slack that looms are cut with where nothing is said. @source common practice, no source */
export const USUAL_SLACK_percent = 3;

/**
 * Length to cut a wire to.
 * @returns metres, rounded up to the next whole centimetre: nobody cuts to less, and short is scrap
 * @throws RangeError for a negative or not finite length
 * @source geometry; slack and terminations are habits of the workshop
 */
export function cutLength(task: CutTask): Figure {
  for (const run_m of task.runs_m) requireNotNegative("run", run_m);
  requireNotNegative("slack_percent", task.slack_percent);
  requireNotNegative("extra_m", task.extra_m);
  for (const end_mm of task.termination_mm) requireNotNegative("termination_mm", end_mm);
  const runs_m = task.runs_m.reduce((sum, run_m) => sum + run_m, 0);
  const ends_mm = task.termination_mm[0] + task.termination_mm[1];
  const exact_m = runs_m * (1 + task.slack_percent / 100) + task.extra_m + ends_mm / 1000;
  // A hair below the whole centimetre is that centimetre: sums of decimals are not exact.
  const value = Math.max(0, Math.ceil(exact_m * 100 - 1e-9)) / 100;
  return {
    value,
    unit: "m",
    formula: `${digits(runs_m)} m × (1 + ${digits(task.slack_percent)} %) + ${digits(task.extra_m)} m + ${digits(ends_mm)} mm = ${digits(exact_m)} m, cut at ${digits(value)} m`,
    table: null,
    source: "the runs' lengths; slack and terminations common practice, no source",
    doubt: null,
  };
}

/**
 * Cost of the wire of one cut, where a price is given.
 * @param pricePerMetre in whatever currency the person writes; 0 or more
 * @throws RangeError for NaN or a negative number
 */
export function wireCost(length_m: number, pricePerMetre: number, currency: string): Figure {
  requireNotNegative("length_m", length_m);
  requireNotNegative("pricePerMetre", pricePerMetre);
  const value = length_m * pricePerMetre;
  return {
    value,
    unit: currency,
    formula: `${digits(length_m)} m × ${digits(pricePerMetre)} ${currency}/m = ${value.toFixed(2)} ${currency}`,
    table: null,
    source: "the price given",
    doubt: null,
  };
}
