import type { Answer } from "../figure.ts";
import { requireBetween } from "../require.ts";

/** How and where a wire lies, as far as the books ask. */
export type AmpacityConditions = {
  /** What the insulation stands in continuous use, °C. */
  readonly insulationLimit_degC: number;
  /** In an engine space, reckoned at 50 °C; elsewhere at 30 °C. */
  readonly engineSpace: boolean;
  /** Conductors of the bundle that carry current at the same time, this one included. 1 = lies alone. */
  readonly loadedInBundle: number;
  /** Nominal voltage of the system: 12, 24, 230. */
  readonly system_V: number;
};

/** A published way to say how much current a wire may carry for good. Several exist, and they differ threefold. */
export type AmpacityBook = {
  readonly id: string;
  readonly name: string;
  /** For what it was written, and what it takes for granted. */
  readonly covers: string;
  readonly source: string;
  readonly doubt: string | null;
  /**
   * @param area_mm2 metal cross-section of a copper conductor, mm²
   * @returns amperes, or why the book does not say
   * @throws RangeError for an area not in 0.001 to 1 000 mm², or conditions out of range
   */
  readonly ampacity: (area_mm2: number, conditions: AmpacityConditions) => Answer;
};

/** Throws for conditions that no wire lies in. */
export function requireConditions(conditions: AmpacityConditions): void {
  requireBetween("insulationLimit_degC", conditions.insulationLimit_degC, 50, 300);
  requireBetween("loadedInBundle", conditions.loadedInBundle, 1, 100_000);
  requireBetween("system_V", conditions.system_V, 1, 1500);
}

/**
 * How much a book's current shrinks in other air, from the balance of heat: made as I²R, shed as the rise over the air.
 * @param limit_degC what the insulation stands; @param ambient_degC the air it lies in; @param reference_degC the book's
 * @returns factor from 0 (air as hot as the insulation may get) up
 * @throws RangeError where the limit is not above the reference
 * @accuracy within 0.7 % of every factor of 33 CFR 183.425 table 5 note 1 (50 °C against 30 °C, 60 to 125 °C wire)
 */
export function ambientFactor(limit_degC: number, ambient_degC: number, reference_degC: number): number {
  requireBetween("limit_degC", limit_degC, reference_degC + 1, 400);
  requireBetween("ambient_degC", ambient_degC, -60, 400);
  return Math.sqrt(Math.max(0, limit_degC - ambient_degC) / (limit_degC - reference_degC));
}
