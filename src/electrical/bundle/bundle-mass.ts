import { digits, type Figure } from "../figure.ts";
import { requireNotNegative } from "../require.ts";

/** One wire of a bundle: what a metre of it weighs, and how much of it there is. */
export type MassShare = { readonly grams_per_m: number; readonly length_m: number };

/**
 * Mass of a bundle's wires, coverings not included.
 * @returns grams
 * @throws RangeError for NaN or negative numbers
 */
export function bundleMass(wires: readonly MassShare[]): Figure {
  let value = 0;
  let length_m = 0;
  for (const wire of wires) {
    requireNotNegative("grams_per_m", wire.grams_per_m);
    requireNotNegative("length_m", wire.length_m);
    value += wire.grams_per_m * wire.length_m;
    length_m += wire.length_m;
  }
  return {
    value,
    unit: "g",
    formula: `Σ mass per metre × length over ${wires.length} wires, ${digits(length_m)} m in all = ${digits(value)} g`,
    table: null,
    source: "sum over the wires",
    doubt: "coverings, tape and terminals not included",
  };
}
