/** How far a wire's current is taken back for its neighbours in a bundle. */
export type BundleFactors = {
  readonly name: string;
  readonly source: string;
  /** Least number of loaded conductors, and the factor from there on; ascending. Below the first the factor is 1. */
  readonly steps: readonly (readonly [conductors: number, factor: number])[];
};

export const CFR_BUNDLE_FACTORS: BundleFactors = {
  name: "33 CFR 183.435(b) with table 5 note 2",
  source: "33 CFR 183.435(b), figures from a reprint of the Coast Guard's compliance guideline",
  steps: [
    [3, 0.7],
    [4, 0.6],
    [7, 0.5],
    [25, 0.4],
  ],
};

export const NEC_BUNDLE_FACTORS: BundleFactors = {
  name: "NEC table 310.15(B)(3)(a)",
  source: "NEC table 310.15(B)(3)(a), more than three current-carrying conductors; seen twice in reprint",
  steps: [
    [4, 0.8],
    [7, 0.7],
    [10, 0.5],
    [21, 0.45],
    [31, 0.4],
    [41, 0.35],
  ],
};

/**
 * The factor for a number of loaded conductors.
 * @throws RangeError for NaN or less than 1
 */
export function bundleFactor(factors: BundleFactors, loaded: number): number {
  if (!(loaded >= 1)) throw new RangeError(`loaded conductors: ${loaded}; expected 1 or more`);
  return factors.steps.findLast(([from]) => loaded >= from)?.[1] ?? 1;
}
