import { requireNotNegative, requirePositive } from "../require.ts";

/** What one stretch of a path takes of the voltage. */
export type DropShare = { readonly name: string; readonly drop_V: number };

export type DropBudget = {
  readonly total_V: number;
  readonly limit_V: number;
  /** What is left; below 0 where the budget is overdrawn. */
  readonly left_V: number;
  readonly within: boolean;
  /** The stretch that takes most; `null` on an empty path. */
  readonly largest: DropShare | null;
  /** "0.31 V of 0.40 V; 0.18 V of it in the shared ground lead G2" */
  readonly words: string;
};

/**
 * Adds up a path from the supply to the load and back, as a budget that a person can read.
 * @param shares volts each stretch loses, in the order of the path
 * @throws RangeError for a drop below 0 or NaN, or a limit not above 0
 */
export function dropBudget(shares: readonly DropShare[], limit_V: number): DropBudget {
  requirePositive("limit_V", limit_V);
  let total_V = 0;
  let largest: DropShare | null = null;
  for (const share of shares) {
    requireNotNegative(`drop of ${share.name}`, share.drop_V);
    total_V += share.drop_V;
    if (largest === null || share.drop_V > largest.drop_V) largest = share;
  }
  const worst = largest === null ? "" : `; ${largest.drop_V.toFixed(2)} V of it in ${largest.name}`;
  return {
    total_V,
    limit_V,
    left_V: limit_V - total_V,
    within: total_V <= limit_V,
    largest,
    words: `${total_V.toFixed(2)} V of ${limit_V.toFixed(2)} V${worst}`,
  };
}
