import { digits, type Figure } from "../figure.ts";
import { requireNotNegative, requirePositive } from "../require.ts";

/**
 * Current that flows where a feed touches ground at the end of a loop.
 * @param source_V open-circuit volts of the supply, above 0
 * @param source_ohm its internal resistance, 0 or more
 * @param loop_ohm wires, contacts and fuses out to the fault and back, 0 or more
 * @returns amperes
 * @throws RangeError for NaN, or where both resistances are 0: no current can be named then
 * @source Ohm's law; the arc and the fault itself are taken as no resistance, so the true current is lower
 */
export function prospectiveCurrent(source_V: number, source_ohm: number, loop_ohm: number): Figure {
  requirePositive("source_V", source_V);
  requireNotNegative("source_ohm", source_ohm);
  requireNotNegative("loop_ohm", loop_ohm);
  requirePositive("source_ohm + loop_ohm", source_ohm + loop_ohm);
  const value = source_V / (source_ohm + loop_ohm);
  return {
    value,
    unit: "A",
    formula: `I = U / (R source + R loop) = ${digits(source_V)} V / (${digits(source_ohm * 1000)} mΩ + ${digits(loop_ohm * 1000)} mΩ) = ${digits(value)} A`,
    table: null,
    source: "Ohm's law",
    doubt: "the fault itself is taken as no resistance; a real one carries less",
  };
}
