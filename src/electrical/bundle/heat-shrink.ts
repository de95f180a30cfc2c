import { requirePositive } from "../require.ts";

/** A tube that shrinks when heated. */
export type HeatShrink = {
  /** "6.4 mm 2:1" */
  readonly name: string;
  /** Inside, as supplied: at least this. */
  readonly supplied_mm: number;
  /** Inside, fully shrunk with nothing in it: at most this. */
  readonly recovered_mm: number;
};

/** Stocked inside diameters: fractions of an inch in millimetres. @source common practice, no source */
const SUPPLIED_mm = [1.6, 2.4, 3.2, 4.8, 6.4, 9.5, 12.7, 19.1, 25.4, 38.1, 50.8] as const;
export type ShrinkRatio = 2 | 3 | 4;

/** Stocked tubes of a ratio, small to large. 2:1 shrinks to half, 3:1 to a third. */
export function stockedHeatShrink(ratio: ShrinkRatio): readonly HeatShrink[] {
  return SUPPLIED_mm.map((supplied_mm) => ({
    name: `${supplied_mm} mm ${ratio}:1`,
    supplied_mm,
    recovered_mm: supplied_mm / ratio,
  }));
}

/** Play to slide a tube over the widest part: 20 % by one supplier's guide (its range is 20 to 30 %). */
export const SLIDE_ON = 1.2;

export type ShrinkFit = {
  readonly fits: boolean;
  /** Wide enough to slide over the widest part with play. */
  readonly slidesOn: boolean;
  /** Grips the thinnest part: what it shrinks to is no wider. */
  readonly grips: boolean;
  readonly why: string;
};

/**
 * Does a tube slide over the widest part and still grip the thinnest?
 * @param widest_mm bundle, connector or joint it must pass; @param thinnest_mm what it must close on
 * @throws RangeError for NaN, numbers not above 0, or a thinnest above the widest
 * @source suppliers' size guides: recovered below the smallest part (three), 20 to 30 % play (one; another asks for 50 %)
 */
export function shrinkFit(tube: HeatShrink, widest_mm: number, thinnest_mm: number): ShrinkFit {
  requirePositive("widest_mm", widest_mm);
  requirePositive("thinnest_mm", thinnest_mm);
  if (thinnest_mm > widest_mm)
    throw new RangeError(`thinnest ${thinnest_mm} mm is above widest ${widest_mm} mm`);
  const needed_mm = widest_mm * SLIDE_ON;
  // A hair's tolerance: 5 mm × 1.2 is 6 mm on paper.
  const slidesOn = tube.supplied_mm >= needed_mm - 1e-9;
  const grips = tube.recovered_mm <= thinnest_mm + 1e-9;
  const on = `${slidesOn ? "slides on" : "too narrow to slide on"}: ${round(tube.supplied_mm)} mm for ${round(needed_mm)} mm`;
  const grip = `${grips ? "grips" : "stays loose"}: shrinks to ${round(tube.recovered_mm)} mm over ${round(thinnest_mm)} mm`;
  return { fits: slidesOn && grips, slidesOn, grips, why: `${on}; ${grip}` };
}

/**
 * The smallest tube of a stock that fits; least ratio first, for it costs least.
 * @returns `null` where none does
 */
export function chooseHeatShrink(
  widest_mm: number,
  thinnest_mm: number,
  stock: readonly HeatShrink[] = [2, 3, 4].flatMap((ratio) => stockedHeatShrink(ratio as ShrinkRatio)),
): HeatShrink | null {
  return stock.find((tube) => shrinkFit(tube, widest_mm, thinnest_mm).fits) ?? null;
}

function round(value_mm: number): number {
  return Number(value_mm.toFixed(2));
}
