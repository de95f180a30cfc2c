import { digits, type Figure } from "../figure.ts";
import { requireNotNegative, requirePositive } from "../require.ts";
import { type ConductorMetal, conductorResistance } from "./resistance.ts";

export type Drop = {
  /** Volts lost along the conductor. */
  readonly drop: Figure;
  /** The same in per cent of the system's voltage. */
  readonly percent: Figure;
};

/**
 * Voltage lost along a conductor.
 * @param metal size, material, temperature and table
 * @param length_m of copper, metres: supply and return counted both where both are wires
 * @param current_A 0 or more
 * @param system_V what the percentage is taken of, above 0
 * @throws RangeError for NaN, a negative length or current, a voltage not above 0
 */
export function voltageDrop(
  metal: ConductorMetal,
  length_m: number,
  current_A: number,
  system_V: number,
): Drop {
  requireNotNegative("current_A", current_A);
  requirePositive("system_V", system_V);
  const resistance = conductorResistance(metal, length_m);
  const drop_V = resistance.value * current_A;
  const share = (drop_V / system_V) * 100;
  return {
    drop: {
      ...resistance,
      value: drop_V,
      unit: "V",
      formula: `${resistance.formula}; ΔU = R · I = ${digits(resistance.value * 1000)} mΩ × ${digits(current_A)} A = ${digits(drop_V)} V`,
    },
    percent: {
      ...resistance,
      value: share,
      unit: "%",
      formula: `ΔU / U = ${digits(drop_V)} V / ${digits(system_V)} V = ${digits(share, 3)} %`,
    },
  };
}

/**
 * The cross-section that loses exactly the drop allowed: A = ρ · l · I / ΔU.
 * @param resistivity_ohm_mm2_per_m of the metal at its temperature
 * @param length_m of copper, out and back
 * @returns mm²
 * @throws RangeError for NaN, or a drop not above 0
 */
export function areaForDrop_mm2(
  resistivity_ohm_mm2_per_m: number,
  length_m: number,
  current_A: number,
  drop_V: number,
): number {
  requirePositive("resistivity_ohm_mm2_per_m", resistivity_ohm_mm2_per_m);
  requireNotNegative("length_m", length_m);
  requireNotNegative("current_A", current_A);
  requirePositive("drop_V", drop_V);
  return (resistivity_ohm_mm2_per_m * length_m * current_A) / drop_V;
}

/**
 * The same in the units of marine tables: CM = K · I · L / E.
 * @param length_ft out and back, feet
 * @param k ohm circular mils per foot: 10.75 in ABYC E-11 (copper at 29 °C), 12.9 in NEC work (copper near 80 °C)
 * @returns circular mils
 * @throws RangeError for NaN, or a drop not above 0
 * @source ABYC E-11, 11.14.2.6
 */
export function circularMilsForDrop(current_A: number, length_ft: number, drop_V: number, k = 10.75): number {
  return areaForDrop_mm2(k, length_ft, current_A, drop_V);
}
