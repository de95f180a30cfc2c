import { digits, type Figure } from "../figure.ts";
import { requirePositive } from "../require.ts";

/** How tightly a bundle may be bent, in outside diameters. */
export type BendRule = {
  readonly id: string;
  readonly times: number;
  readonly covers: string;
  readonly source: string;
  readonly doubt: string | null;
};

export const BEND_RULES: readonly BendRule[] = [
  {
    id: "cable-long-term",
    times: 10,
    covers: "cable bent for good",
    source: "NASA-STD-8739.4 7.3.21",
    doubt: "seen once, for single cables",
  },
  {
    id: "cable-least",
    times: 6,
    covers: "cable, never tighter",
    source: "NASA-STD-8739.4 7.3.21",
    doubt: "seen once, for single cables",
  },
  {
    id: "bundle-aircraft",
    times: 10,
    covers: "bundle of wires in an aircraft",
    source: "FAA AC 43.13-1B chapter 11",
    doubt: "from memory",
  },
  {
    id: "breakout-aircraft",
    times: 3,
    covers: "supported breakout of a bundle in an aircraft",
    source: "FAA AC 43.13-1B chapter 11",
    doubt: "from memory",
  },
];

/**
 * Least radius, to the inside of the bend, that a bundle may be laid in.
 * @param diameter_mm of the bundle or, where that asks for more, of its most delicate member; above 0
 * @returns mm
 * @throws RangeError for NaN or a diameter not above 0
 */
export function leastBendRadius(diameter_mm: number, rule: BendRule = BEND_RULES[0]!): Figure {
  requirePositive("diameter_mm", diameter_mm);
  const value = diameter_mm * rule.times;
  return {
    value,
    unit: "mm",
    formula: `${rule.times} × ${digits(diameter_mm, 3)} mm = ${digits(value, 3)} mm`,
    table: null,
    source: rule.source,
    doubt: rule.doubt,
  };
}
