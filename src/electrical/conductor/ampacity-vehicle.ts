import { type Answer, digits, doubts } from "../figure.ts";
import {
  type AmpacityBook,
  type AmpacityConditions,
  ambientFactor,
  requireConditions,
} from "./ampacity-book.ts";
import { bundleFactor, NEC_BUNDLE_FACTORS } from "./bundle-factors.ts";
import { requireArea } from "./resistance.ts";

const SHEET_TABLE = "thin-wall vehicle cable, nominal current";
const SHEET_SOURCE = "a cable distributor's sheet for ISO 6722 class B thin-wall PVC cable";
const SHEET_DOUBT =
  "seen once; the sheet names neither the air nor the bundle, so 30 °C and a wire lying alone are taken for granted";

/** Cross-section in mm², amperes. */
export const THIN_WALL_SHEET: readonly (readonly [area_mm2: number, amperes: number])[] = [
  [0.5, 11],
  [0.75, 14],
  [1, 16.5],
  [1.5, 21],
  [2, 25],
  [2.5, 29],
  [3, 33],
  [4, 39],
  [4.5, 42],
  [6, 50],
  [8.5, 63],
  [10, 70],
];

/** The sheet's cable is sold to 105 °C; the class it is named after stands 100 °C. */
const SHEET_LIMIT_degC = 100;
const OPEN_AIR_degC = 30;
const ENGINE_SPACE_degC = 50;

function sheetAmpacity(area_mm2: number, conditions: AmpacityConditions): Answer {
  requireArea(area_mm2);
  requireConditions(conditions);
  const [largest] = THIN_WALL_SHEET.at(-1)!;
  const row = THIN_WALL_SHEET.findLast(([area]) => area * 0.995 <= area_mm2);
  if (!row)
    return { unknown: `the sheet begins at ${THIN_WALL_SHEET[0]![0]} mm²; this is ${digits(area_mm2)} mm²` };
  if (area_mm2 > largest * 1.005) {
    return { unknown: `the sheet ends at ${largest} mm²; this is ${digits(area_mm2)} mm²` };
  }
  if (conditions.insulationLimit_degC < SHEET_LIMIT_degC) {
    return {
      unknown: `the sheet is for ${SHEET_LIMIT_degC} °C cable; this is ${conditions.insulationLimit_degC} °C cable`,
    };
  }
  const air = conditions.engineSpace ? ambientFactor(SHEET_LIMIT_degC, ENGINE_SPACE_degC, OPEN_AIR_degC) : 1;
  const bundle = bundleFactor(NEC_BUNDLE_FACTORS, conditions.loadedInBundle);
  const value = row[1] * air * bundle;
  const airWords = air === 1 ? "" : ` × √((100 − 50) / (100 − 30)) = ${digits(air, 3)} in an engine space`;
  const bundleWords =
    bundle === 1 ? "" : ` × ${bundle} for ${conditions.loadedInBundle} loaded in the bundle`;
  return {
    value,
    unit: "A",
    formula: `${digits(area_mm2)} mm², row of ${row[0]} mm²: ${row[1]} A${airWords}${bundleWords} = ${digits(value)} A`,
    table: bundle === 1 ? SHEET_TABLE : `${SHEET_TABLE}; ${NEC_BUNDLE_FACTORS.name}`,
    source: SHEET_SOURCE,
    doubt: doubts(
      SHEET_DOUBT,
      air === 1 ? null : "hot air is reckoned from the balance of heat, not from the sheet",
      bundle === 1 ? null : "the bundle factor is the building code's, not the sheet's",
    ),
  };
}

export const THIN_WALL: AmpacityBook = {
  id: "thin-wall-sheet",
  name: "thin-wall vehicle cable, maker's sheet",
  covers:
    "Single thin-wall PVC vehicle cable of 0.5 to 10 mm². The sheet states no air temperature and no bundle: 30 °C is taken, an engine space is reckoned from the balance of heat, a bundle by NEC table 310.15(B)(3)(a).",
  source: SHEET_SOURCE,
  doubt: SHEET_DOUBT,
  ampacity: sheetAmpacity,
};

const RULE_A_per_mm2 = 5;
const RULE_SOURCE = "two German vehicle-wiring guides: 5 A per mm² for good, 10 A per mm² for a short time";

/** The workshop's rule. Cautious for thin wire, too bold for thick. */
export const FIVE_PER_MM2: AmpacityBook = {
  id: "five-per-mm2",
  name: "5 A per mm², rule of thumb",
  covers:
    "Vehicle looms of usual insulation in usual places; a rule of thumb that asks for nothing else. Heat is shed by the surface, so it is cautious for thin wire and bold above about 16 mm².",
  source: RULE_SOURCE,
  doubt: "a rule of thumb: knows neither air, bundle nor insulation",
  ampacity: (area_mm2, conditions) => {
    requireArea(area_mm2);
    requireConditions(conditions);
    const value = area_mm2 * RULE_A_per_mm2;
    return {
      value,
      unit: "A",
      formula: `${digits(area_mm2)} mm² × 5 A/mm² = ${digits(value)} A`,
      table: null,
      source: RULE_SOURCE,
      doubt: doubts(
        "a rule of thumb: knows neither air, bundle nor insulation",
        area_mm2 > 16 ? "bold for wire as thick as this" : null,
      ),
    };
  },
};
