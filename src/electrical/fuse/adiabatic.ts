import type { Material } from "../conductor/material.ts";
import { requireArea } from "../conductor/resistance.ts";
import { digits, type Figure, isKnown } from "../figure.ts";
import { requireBetween, requireNotNegative } from "../require.ts";
import type { Blade } from "./blade.ts";
import { type BlowTime, blowTime } from "./blow-time.ts";
import { letThrough } from "./let-through.ts";

/** What is around the metal, and how hot it may get for the time of a fault. */
export type Insulation = "pvc" | "xlpe";

const FAULT_LIMIT_degC: Readonly<Record<Insulation, number>> = { pvc: 160, xlpe: 250 };
/** Where each metal's resistance would end, °C, and the constant of its heat; IEC 60364-5-54 annex A. */
const METALS = {
  copper: { zero_degC: 234.5, constant: 226 },
  aluminium: { zero_degC: 228, constant: 148 },
} as const;

const K_SOURCE =
  "IEC 60364-5-54 annex A: k = K √ln((β + θf) / (β + θi)), as reprinted in a cable-sizing guide";

/**
 * The heat a conductor can take up in a fault, per square of its area: k of I²t = k²S².
 * @param start_degC of the metal when the fault begins; PVC −40 to 159, cross-linked −40 to 249
 * @returns A√s/mm²: 115 for PVC from 70 °C, 143 for cross-linked from 90 °C, copper
 * @throws RangeError where the conductor is at its limit already
 */
export function kFactor(material: Material, insulation: Insulation, start_degC: number): Figure {
  const limit_degC = FAULT_LIMIT_degC[insulation];
  requireBetween("start_degC", start_degC, -40, limit_degC - 1);
  const clad = material === "cca-15" || material === "cca-10";
  const { zero_degC, constant } = METALS[clad ? "aluminium" : "copper"];
  const value = constant * Math.sqrt(Math.log((zero_degC + limit_degC) / (zero_degC + start_degC)));
  return {
    value,
    unit: "A√s/mm²",
    formula: `k = ${constant} √ln((${zero_degC} + ${limit_degC}) / (${zero_degC} + ${digits(start_degC)})) = ${digits(value)}`,
    table: null,
    source: K_SOURCE,
    doubt: clad ? "clad aluminium is reckoned as bare aluminium, which is the cautious side" : null,
  };
}

export type FaultCheck = {
  /** `clears`: the fuse opens first, at its slowest. `overheats`: the wire is past its limit even at its fastest. */
  readonly verdict: "clears" | "overheats" | "not proven";
  readonly time: BlowTime;
  /** Most that the fuse may let pass; `null` where the table names none. A²s */
  readonly passes: Figure | null;
  /** k²S²: what the wire bears. A²s */
  readonly bears: Figure;
  readonly why: string;
};

/**
 * Does the fuse open before the wire is too hot for its insulation? All heat is taken to stay in the metal.
 * @param fault_A prospective current, 0 or more
 * @throws RangeError for NaN, an area or temperature out of range
 * @source adiabatic check I²t ≤ k²S², IEC 60364-4-43 and 5-54; meant for up to 5 s, cautious beyond
 */
export function checkFault(
  fuse: Blade,
  fault_A: number,
  wire: {
    readonly area_mm2: number;
    readonly material: Material;
    readonly insulation: Insulation;
    readonly start_degC: number;
  },
): FaultCheck {
  requireArea(wire.area_mm2);
  requireNotNegative("fault_A", fault_A);
  const bears = withstand(wire.area_mm2, kFactor(wire.material, wire.insulation, wire.start_degC));
  const time = blowTime(fuse, fault_A);
  const passed = letThrough(fuse, fault_A);
  if (isKnown(passed) && passed.value <= bears.value) {
    const why = `at most ${digits(passed.value)} A²s pass before the fuse opens; the wire bears ${digits(bears.value)} A²s`;
    return { verdict: "clears", time, passes: passed, bears, why };
  }
  const least_s = time.promised.least_s;
  const passes = isKnown(passed) ? passed : null;
  if (least_s !== "unknown" && fault_A ** 2 * least_s > bears.value && least_s <= ADIABATIC_s) {
    const why = `even the fastest fuse lets ${digits(fault_A ** 2 * least_s)} A²s pass; the wire bears ${digits(bears.value)} A²s`;
    return { verdict: "overheats", time, passes, bears, why };
  }
  const why = isKnown(passed)
    ? `a slow fuse may let ${digits(passed.value)} A²s pass; the wire bears ${digits(bears.value)} A²s if no heat leaves it`
    : passed.unknown;
  return { verdict: "not proven", time, passes, bears, why };
}

/** Longer than this, heat leaves the wire and the sum is no proof that it burns. */
const ADIABATIC_s = 5;

function withstand(area_mm2: number, k: Figure): Figure {
  const value = (k.value * area_mm2) ** 2;
  return {
    ...k,
    value,
    unit: "A²s",
    formula: `${k.formula}; k²S² = (${digits(k.value)} × ${digits(area_mm2)})² = ${digits(value)} A²s`,
  };
}
