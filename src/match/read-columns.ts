import * as chart from "./read/columns.ts";
import { type ChartColumn, readHeads as readChartHeads } from "./read/heads.ts";

/** What a column of pasted rows holds. `text` is kept as it is. */
export const COLUMN_ROLES = ["label", "function", "colour", "tracer", "size", "text"] as const;
export type ColumnRole = (typeof COLUMN_ROLES)[number];

/** A cavity has no place for the others: what stands there is kept as words. */
function roleOf(column: ChartColumn): ColumnRole {
  return COLUMN_ROLES.find((role) => role === column) ?? "text";
}

/** True where a row names the columns. */
export function isHeads(row: readonly string[]): boolean {
  return readChartHeads(row) !== null;
}

/** Says what the columns are by their heads, and where these say nothing by what stands in them. */
export function guessColumns(
  rows: readonly (readonly string[])[],
  heads: readonly string[] | null,
): readonly ColumnRole[] {
  return chart.guessColumns(rows, heads).map(roleOf);
}
