import { digits, type Figure } from "../figure.ts";
import { requireBetween } from "../require.ts";

/**
 * Level where two speakers play the same at the same place, against one of them alone.
 * @param apart_dB how much quieter the second is, 0 to 100
 * @param reversed one of them is wired the other way about
 * @returns dB; −∞ where two exact equals cancel
 * @throws RangeError for NaN or a difference outside 0 to 100
 * @source sum of coherent pressures: 20 log₁₀(1 ± 10^(−d/20))
 */
export function summedLevel(apart_dB: number, reversed: boolean): Figure {
  requireBetween("apart_dB", apart_dB, 0, 100);
  const second = 10 ** (-apart_dB / 20);
  const value = 20 * Math.log10(reversed ? 1 - second : 1 + second);
  const sign = reversed ? "−" : "+";
  return {
    value,
    unit: "dB",
    formula: `20 log₁₀(1 ${sign} 10^(−${digits(apart_dB)}/20)) = ${digits(value, 3)} dB`,
    table: null,
    source: "sum of coherent sound pressures",
    doubt: "in a room this holds for long waves only: reversed speakers lose their bass first",
  };
}
