import { type Answer, digits, doubts } from "../figure.ts";
import { type AmpacityBook, type AmpacityConditions, requireConditions } from "./ampacity-book.ts";
import { type GaugeRow, readRow, sayRow } from "./ampacity-rows.ts";
import { bundleFactor, CFR_BUNDLE_FACTORS } from "./bundle-factors.ts";
import { requireArea } from "./resistance.ts";

const TABLE = "33 CFR 183.425 table 5";
const SOURCE =
  "33 CFR 183.425 table 5, up to 30 °C; the separately printed marine table for bundles of three is 0.70 of it in all 180 cells";

export const CFR_COLUMNS_degC = [60, 75, 80, 90, 105, 125, 200] as const;

/** Amperes by gauge and insulation temperature, 30 °C air. */
export const CFR_TABLE_5: readonly GaugeRow[] = [
  ["18", [10, 10, 15, 20, 20, 25, 25]],
  ["16", [15, 15, 20, 25, 25, 30, 35]],
  ["14", [20, 20, 25, 30, 35, 40, 45]],
  ["12", [25, 25, 35, 40, 45, 50, 55]],
  ["10", [40, 40, 50, 55, 60, 70, 70]],
  ["8", [55, 65, 70, 70, 80, 90, 100]],
  ["6", [80, 95, 100, 100, 120, 125, 135]],
  ["4", [105, 125, 130, 135, 160, 170, 180]],
  ["3", [120, 145, 150, 155, 180, 195, 210]],
  ["2", [140, 170, 175, 180, 210, 225, 240]],
  ["1", [165, 195, 210, 210, 245, 265, 280]],
  ["1/0", [195, 230, 245, 245, 285, 305, 325]],
  ["2/0", [225, 265, 285, 285, 330, 355, 370]],
  ["3/0", [260, 310, 330, 330, 385, 410, 430]],
  ["4/0", [300, 360, 385, 385, 445, 475, 510]],
];

/** Note 1: what remains in an engine space, 50 °C, by insulation temperature. */
export const CFR_ENGINE_FACTORS: ReadonlyMap<number, number> = new Map([
  [60, 0.58],
  [75, 0.75],
  [80, 0.78],
  [90, 0.82],
  [105, 0.85],
  [125, 0.89],
  [200, 1],
]);

const SIXTY_DOUBT =
  "the factor for 60 °C wire in an engine space is from memory; the marine table allows none there";

function cfrAmpacity(area_mm2: number, conditions: AmpacityConditions, bundledFrom_V: number): Answer {
  requireArea(area_mm2);
  requireConditions(conditions);
  const row = readRow(TABLE, CFR_COLUMNS_degC, CFR_TABLE_5, area_mm2, conditions.insulationLimit_degC);
  if ("unknown" in row) return row;
  const engine = conditions.engineSpace ? CFR_ENGINE_FACTORS.get(row.column_degC)! : 1;
  const counts = conditions.system_V >= bundledFrom_V;
  const bundle = counts ? bundleFactor(CFR_BUNDLE_FACTORS, conditions.loadedInBundle) : 1;
  const value = row.amperes * engine * bundle;
  const engineWords = conditions.engineSpace ? ` × ${engine} in an engine space` : "";
  const bundleWords =
    bundle === 1 ? "" : ` × ${bundle} for ${conditions.loadedInBundle} loaded in the bundle`;
  return {
    value,
    unit: "A",
    formula: `${sayRow(row.gauge, area_mm2)}, ${row.column_degC} °C: ${row.amperes} A${engineWords}${bundleWords} = ${digits(value)} A`,
    table: bundle === 1 ? TABLE : `${TABLE}; ${CFR_BUNDLE_FACTORS.name}`,
    source: SOURCE,
    doubt: doubts(
      conditions.engineSpace && row.column_degC === 60 ? SIXTY_DOUBT : null,
      !counts && conditions.loadedInBundle >= 3
        ? "under 50 V the regulation takes nothing back for a bundle; marine practice takes 0.70 from three conductors on"
        : null,
    ),
  };
}

/** Federal regulation for boats, as it is written. */
export const CFR_AS_WRITTEN: AmpacityBook = {
  id: "33-cfr-183",
  name: "33 CFR 183.425",
  covers:
    "Wiring of gasoline boats in the United States, 18 AWG and up, in 30 °C air or a 50 °C engine space. Bundles count only from 50 V. Not for circuits under 1 A, inside equipment, or cranking.",
  source: SOURCE,
  doubt: null,
  ampacity: (area_mm2, conditions) => cfrAmpacity(area_mm2, conditions, 50),
};

/** The same table, with its bundle factors at any voltage: what a bundle does to a wire does not ask for volts. */
export const CFR_BUNDLED: AmpacityBook = {
  id: "33-cfr-183-bundled",
  name: "33 CFR 183.425, bundles at any voltage",
  covers:
    "The boat table with its bundle factors applied below 50 V too, as marine practice does from the first bundle of three. Takes every conductor named as loaded to be loaded at once and for good.",
  source: SOURCE,
  doubt: "the regulation itself asks for bundle factors from 50 V only",
  ampacity: (area_mm2, conditions) => cfrAmpacity(area_mm2, conditions, 0),
};
