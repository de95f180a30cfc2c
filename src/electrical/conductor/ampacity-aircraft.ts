import { type Answer, doubts } from "../figure.ts";
import { type AmpacityBook, type AmpacityConditions, requireConditions } from "./ampacity-book.ts";
import { type GaugeRow, readRow, sayRow } from "./ampacity-rows.ts";
import { requireArea } from "./resistance.ts";

const TABLE = "FAA AC 43.13-1B table 11-9";
const SOURCE = "FAA AC 43.13-1B chapter 11 table 11-9, continuous current in bundles; seen twice in reprint";

export const AIRCRAFT_COLUMNS_degC = [105, 150, 200] as const;

/** Amperes for good in a bundle, 70 °C air, by gauge and conductor temperature. */
export const AIRCRAFT_TABLE_11_9: readonly GaugeRow[] = [
  ["24", [2.5, 4, 5]],
  ["22", [3, 5, 6]],
  ["20", [4, 7, 9]],
  ["18", [6, 9, 12]],
  ["16", [7, 11, 14]],
  ["14", [10, 14, 18]],
  ["12", [13, 19, 25]],
  ["10", [17, 26, 32]],
  ["8", [38, 57, 71]],
  ["6", [50, 76, 97]],
  ["4", [68, 103, 133]],
  ["2", [95, 141, 179]],
  ["1", [113, 166, 210]],
  ["1/0", [128, 192, 243]],
  ["2/0", [147, 222, 285]],
  ["3/0", [172, 262, 335]],
  ["4/0", [204, 310, 395]],
];

function aircraftAmpacity(area_mm2: number, conditions: AmpacityConditions): Answer {
  requireArea(area_mm2);
  requireConditions(conditions);
  const limit_degC = conditions.insulationLimit_degC;
  const row = readRow(TABLE, AIRCRAFT_COLUMNS_degC, AIRCRAFT_TABLE_11_9, area_mm2, limit_degC);
  if ("unknown" in row) return row;
  return {
    value: row.amperes,
    unit: "A",
    formula: `${sayRow(row.gauge, area_mm2)}, ${row.column_degC} °C wire in a bundle: ${row.amperes} A`,
    table: TABLE,
    source: SOURCE,
    doubt: doubts(
      conditions.loadedInBundle > 33
        ? "more wires loaded than the table's 33, of which it has a fifth of the capacity in use"
        : null,
    ),
  };
}

/** Very cautious for a vehicle: hot thin air, and a wire always in the middle of a bundle. */
export const AIRCRAFT_BUNDLES: AmpacityBook = {
  id: "ac-43-13-1b",
  name: "FAA AC 43.13-1B, in bundles",
  covers:
    "Aircraft wiring in bundles: 70 °C air at 60 000 ft, 33 or more wires (9 from 8 AWG up) with at most a fifth of their capacity in use. 105 °C wire and better, 24 AWG and up. Already holds bundle and air, so nothing is taken off again.",
  source: SOURCE,
  doubt: null,
  ampacity: aircraftAmpacity,
};
