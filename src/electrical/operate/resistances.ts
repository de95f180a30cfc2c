import type { Fuse, Splice, Wire } from "../../graph/harness.ts";
import type { Material } from "../conductor/material.ts";
import { type ResistanceBasis, resistancePerMetre } from "../conductor/resistance.ts";

/**
 * What a joint adds, ohms, by how it is made: sound joints of usual wire.
 * @source from memory; a good crimp or solder joint has no more than a few centimetres of its wire
 */
const JOINT_ohm: Readonly<Record<Splice["method"], number>> = {
  "solder-and-sleeve": 0.0002,
  "crimped-butt": 0.0005,
  "bullet-pair": 0.002,
  tap: 0.005,
  "terminal-block": 0.0005,
  twisted: 0.02,
  "twist-on-nut": 0.002,
  unknown: 0.002,
};

export function joint_ohm(method: Splice["method"]): number {
  return JOINT_ohm[method];
}

/**
 * Cold resistance of blade fuses, ohms, by rating.
 * @source a maker's regular blade series: 40 A seen once, 10 A confirmed by a technician's chart, the others from memory;
 * 2 and 3 A on the same line through 5 and 10 A. Maxi: a maker's datasheet, seen once.
 */
const REGULAR_ohm: readonly (readonly [rating_A: number, ohm: number])[] = [
  [1, 0.123],
  [2, 0.053],
  [3, 0.0326],
  [5, 0.01785],
  [7.5, 0.01091],
  [10, 0.0077],
  [15, 0.0048],
  [20, 0.00338],
  [25, 0.00252],
  [30, 0.00197],
  [40, 0.00144],
];
const MAXI_ohm: typeof REGULAR_ohm = [
  [30, 0.0019],
  [35, 0.0017],
  [40, 0.0014],
];

/** Cold resistance of a fuse of a rating, ohms; between and beyond the rows on the power law through the two nearest. */
export function fuse_ohm(form: Fuse["form"], rating_A: number): number {
  const rows = form === "maxi" || form === "bolt-down" ? MAXI_ohm : REGULAR_ohm;
  const above = rows.findIndex(([rating]) => rating >= rating_A);
  const at = above < 0 ? rows.length - 1 : Math.max(1, above);
  const [low, high] = [rows[at - 1]!, rows[at]!];
  const power = Math.log(high[1] / low[1]) / Math.log(high[0] / low[0]);
  return high[1] * (rating_A / high[0]) ** power;
}

/** The table that wires are reckoned by: the most that the standard allows a flexible conductor of the size. */
export const BASIS: ResistanceBasis = "iec-60228-class-5";

const perMetre = new Map<string, number>();

/** Ohms of a metre; the same as `resistancePerMetre`, remembered by what it depends on. */
export function ohmsPerMetre(area_mm2: number, temperature_degC: number, material: Material): number {
  const key = `${area_mm2}|${temperature_degC}|${material}`;
  let value = perMetre.get(key);
  if (value === undefined) {
    value = resistancePerMetre({ area_mm2, temperature_degC, material, basis: BASIS }).value;
    if (perMetre.size > 5000) perMetre.clear();
    perMetre.set(key, value);
  }
  return value;
}

const LIMIT_degC: Readonly<Record<Exclude<Wire["insulation"], "other" | "unknown">, number>> = {
  "thin-wall-85": 85,
  "thin-wall-105": 105,
  "cross-linked-125": 125,
  silicone: 180,
};

/** What a wire's insulation stands for good, °C; `null` where it is not stated. Silicone: from memory. */
export function insulationLimit_degC(insulation: Wire["insulation"]): number | null {
  return insulation === "other" || insulation === "unknown" ? null : LIMIT_degC[insulation];
}
