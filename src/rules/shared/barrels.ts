import type { Splice, Wire } from "../../graph/harness.ts";

export type BarrelColour = Exclude<Splice["barrel"], "bare" | "unknown">;

/**
 * Copper that each colour of insulated crimp holds, mm².
 * @source red 22 to 18, blue 16 to 14, yellow 12 to 10 AWG: a chassis maker's guide for body builders; the wider
 * limits in mm² are those of makers of the barrels, from memory
 */
export const RANGES_mm2: Readonly<Record<BarrelColour, readonly [least: number, most: number]>> = {
  red: [0.25, 1.65],
  blue: [1.04, 2.63],
  yellow: [2.63, 6.64],
};

/** The copper of the wires on one side; where a size is not stated, at least so much. */
export function sideArea(wires: readonly Wire[]): { readonly sum_mm2: number; readonly isKnown: boolean } {
  let sum_mm2 = 0;
  let isKnown = wires.length > 0;
  for (const { area_mm2 } of wires) {
    if (area_mm2 === "unknown") isKnown = false;
    else sum_mm2 += area_mm2;
  }
  return { sum_mm2, isKnown };
}

/** The colours whose barrel holds every one of these. */
export function barrelsFor(areas_mm2: readonly number[]): readonly BarrelColour[] {
  return (Object.keys(RANGES_mm2) as BarrelColour[]).filter((colour) => {
    const [least, most] = RANGES_mm2[colour];
    return areas_mm2.every((area) => area >= least && area <= most);
  });
}
