/**
 * Conductor sizes. Inside, everything is mm²; AWG is a way of writing it.
 * @source ASTM B258: d = 0.005 in × 92^((36 − n) / 39), n = 0, −1, −2, −3 for 1/0 to 4/0
 */

const MM_PER_INCH = 25.4;

/** Gauges that are stocked, thick to thin, as they are written. */
export const AWG_NAMES = [
  "4/0",
  "3/0",
  "2/0",
  "1/0",
  "1",
  "2",
  "3",
  "4",
  "6",
  "8",
  "10",
  "12",
  "14",
  "16",
  "18",
  "20",
  "22",
  "24",
  "26",
  "28",
  "30",
] as const;
export type AwgName = (typeof AWG_NAMES)[number];

/** Cross-sections that metric vehicle cable comes in, mm² (ISO 6722-1 series, from memory). */
export const METRIC_SIZES_mm2 = [
  0.13, 0.22, 0.35, 0.5, 0.75, 1, 1.5, 2, 2.5, 3, 4, 5, 6, 10, 16, 25, 35, 50, 70, 95, 120,
] as const;

function gaugeNumber(name: AwgName): number {
  return name.endsWith("/0") ? 1 - Number(name.slice(0, -2)) : Number(name);
}

/** Diameter of solid round wire of an AWG size, in inches. */
export function awgDiameter_in(name: AwgName): number {
  return 0.005 * 92 ** ((36 - gaugeNumber(name)) / 39);
}

/** Metal cross-section of an AWG size, mm². */
export function awgArea_mm2(name: AwgName): number {
  const diameter_mm = awgDiameter_in(name) * MM_PER_INCH;
  return (Math.PI / 4) * diameter_mm * diameter_mm;
}

/** The stocked gauge nearest by ratio of areas. */
export function nearestAwg(area_mm2: number): AwgName {
  let best: AwgName = "30";
  let least = Number.POSITIVE_INFINITY;
  for (const name of AWG_NAMES) {
    const off = Math.abs(Math.log(awgArea_mm2(name) / area_mm2));
    if (off < least) {
      least = off;
      best = name;
    }
  }
  return best;
}

/** A size as it is printed: "0.75 mm²", or "18 AWG" where the harness is written in AWG; "" where unknown. */
export function writeSize(area_mm2: number | "unknown", sizes: "metric" | "awg"): string {
  if (area_mm2 === "unknown") return "";
  return sizes === "awg" ? `${nearestAwg(area_mm2)} AWG` : `${Number(area_mm2.toPrecision(3))} mm²`;
}

/**
 * Reads a size as a person types it: "0.75", "0,75 mm2", "18 AWG", "#16", "2/0 awg".
 * A bare number is mm² in a metric harness and a gauge in an AWG one.
 * @returns mm², or `null` where it cannot be read
 */
export function readSize(text: string, sizes: "metric" | "awg"): number | null {
  const plain = text.trim().toLowerCase().replace(",", ".");
  const gauge = /^(?:#|awg\s*)?(\d\/0|\d{1,2})\s*(?:awg|ga(?:uge)?)?$/.exec(plain);
  const saysGauge = /#|awg|ga/.test(plain) || plain.includes("/");
  if (gauge && (saysGauge || sizes === "awg")) {
    const name = AWG_NAMES.find((known) => known === gauge[1]);
    return name ? awgArea_mm2(name) : null;
  }
  const metric = /^(\d*\.?\d+)\s*(?:mm²|mm2|mm\^2|sq\.?\s*mm|qmm)?$/.exec(plain);
  const value = metric ? Number(metric[1]) : Number.NaN;
  return value > 0 && value <= 1000 ? value : null;
}
