import { type AwgName, awgArea_mm2 } from "../../catalogue/conductors.ts";
import { digits, type Unknown } from "../figure.ts";

/** One line of an ampacity table: a gauge, and amperes by column of insulation temperature. */
export type GaugeRow = readonly [AwgName, readonly number[]];

export type FoundRow = {
  readonly gauge: AwgName;
  readonly amperes: number;
  /** The insulation temperature of the column that was read. */
  readonly column_degC: number;
};

/**
 * Reads a table by gauge for a wire of any area: the row of the largest gauge that is no thicker than the wire, the
 * column of the highest temperature that the insulation stands. Never reads between rows: that would not be the book's.
 */
export function readRow(
  table: string,
  columns_degC: readonly number[],
  rows: readonly GaugeRow[],
  area_mm2: number,
  insulationLimit_degC: number,
): FoundRow | Unknown {
  const column = columns_degC.findLastIndex((limit) => limit <= insulationLimit_degC);
  if (column < 0) {
    return {
      unknown: `${table} begins at ${columns_degC[0]} °C wire; this is ${insulationLimit_degC} °C wire`,
    };
  }
  // Half a per cent, so that a gauge's area written to three digits is still that gauge.
  const row = rows.findLast(([gauge]) => awgArea_mm2(gauge) * 0.995 <= area_mm2);
  if (!row) {
    return {
      unknown: `${table} begins at ${rows[0]![0]} AWG (${digits(awgArea_mm2(rows[0]![0]), 3)} mm²); ${digits(area_mm2)} mm² is thinner`,
    };
  }
  return { gauge: row[0], amperes: row[1][column]!, column_degC: columns_degC[column]! };
}

/** "16 AWG", or "1.5 mm² counts as 16 AWG" where the wire lies between rows. */
export function sayRow(gauge: AwgName, area_mm2: number): string {
  const same = Math.abs(awgArea_mm2(gauge) / area_mm2 - 1) < 0.01;
  return same ? `${gauge} AWG` : `${digits(area_mm2)} mm² counts as ${gauge} AWG`;
}
