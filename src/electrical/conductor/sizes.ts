import { AWG_NAMES, type AwgName, awgArea_mm2, METRIC_SIZES_mm2 } from "../../catalogue/conductors.ts";

/** A conductor that is stocked: its area, and the name it is asked for by. */
export type StandardSize = { readonly name: string; readonly area_mm2: number };

/** Stocked metric sizes, thin to thick. */
export const METRIC_STANDARD: readonly StandardSize[] = METRIC_SIZES_mm2.map((area_mm2) => ({
  name: `${area_mm2} mm²`,
  area_mm2,
}));

/** Stocked gauges, thin to thick. */
export const AWG_STANDARD: readonly StandardSize[] = [...AWG_NAMES]
  .reverse()
  .map((name) => ({ name: `${name} AWG`, area_mm2: awgArea_mm2(name) }));

/** Square millimetres in one circular mil, the area of a circle 0.001 in across. */
const MM2_PER_CIRCULAR_MIL = (Math.PI / 4) * 0.0254 ** 2;

/** mm² → circular mils. One circular mil is π/4 of a square mil. */
export function toCircularMils(area_mm2: number): number {
  return area_mm2 / MM2_PER_CIRCULAR_MIL;
}

/** Circular mils → mm². */
export function fromCircularMils(area_cmil: number): number {
  return area_cmil * MM2_PER_CIRCULAR_MIL;
}

/**
 * The least copper, in circular mils, that vehicle and boat cable to SAE J1127/J1128 may have for a gauge name:
 * 3 to 11 % less than wire of ASTM B258 of the same name.
 * @source a marine cable table headed SAE, seen once
 */
export const SAE_LEAST_AREA_cmil: ReadonlyMap<AwgName, number> = new Map([
  ["18", 1_537],
  ["16", 2_336],
  ["14", 3_702],
  ["12", 5_833],
  ["10", 9_343],
  ["8", 14_810],
  ["6", 24_538],
  ["4", 37_360],
  ["2", 62_450],
  ["1", 77_790],
  ["1/0", 98_980],
  ["2/0", 125_100],
  ["3/0", 158_600],
  ["4/0", 205_500],
] as const);

/**
 * The thinnest gauge of SAE cable that surely has so much copper.
 * @returns `null` where even 4/0 has less
 * @throws RangeError for NaN
 */
export function saeGaugeFor(area_cmil: number): AwgName | null {
  if (Number.isNaN(area_cmil)) throw new RangeError("area_cmil is NaN");
  for (const [name, least_cmil] of SAE_LEAST_AREA_cmil) if (least_cmil >= area_cmil) return name;
  return null;
}
