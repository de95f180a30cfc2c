import type { WireId } from "../../graph/harness.ts";
import { COLUMNS } from "./table-model.ts";

/** Where the keyboard stands in the table, and where a range began. Rows are named by their wire. */
export type Standing = {
  readonly row: WireId;
  readonly column: number;
  readonly fromRow: WireId;
  readonly fromColumn: number;
};

export type Range = {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
};

/** The block of cells between where the range began and where the keyboard stands; `null` if a row is not shown. */
export function rangeOf(standing: Standing, indexOf: ReadonlyMap<WireId, number>): Range | null {
  const row = indexOf.get(standing.row);
  const from = indexOf.get(standing.fromRow) ?? row;
  if (row === undefined || from === undefined) return null;
  return {
    top: Math.min(row, from),
    bottom: Math.max(row, from),
    left: Math.min(standing.column, standing.fromColumn),
    right: Math.max(standing.column, standing.fromColumn),
  };
}

/** Where the keyboard stands after a move. With `extend` the range grows instead. */
export function moved(
  standing: Standing,
  rows: readonly WireId[],
  indexOf: ReadonlyMap<WireId, number>,
  down: number,
  across: number,
  extend: boolean,
): Standing {
  const at = indexOf.get(standing.row) ?? 0;
  const row = rows[Math.min(rows.length - 1, Math.max(0, at + down))] ?? standing.row;
  const column = Math.min(COLUMNS.length - 1, Math.max(0, standing.column + across));
  return extend ? { ...standing, row, column } : { row, column, fromRow: row, fromColumn: column };
}

export function standAt(row: WireId, column: number): Standing {
  return { row, column, fromRow: row, fromColumn: column };
}

/** How far a key moves: down, across. `null` for a key that does not move. */
export function moveOf(
  key: string,
  mod: boolean,
  page: number,
  rowCount: number,
): readonly [number, number] | null {
  switch (key) {
    case "ArrowDown":
      return [mod ? rowCount : 1, 0];
    case "ArrowUp":
      return [mod ? -rowCount : -1, 0];
    case "ArrowRight":
      return [0, mod ? COLUMNS.length : 1];
    case "ArrowLeft":
      return [0, mod ? -COLUMNS.length : -1];
    case "PageDown":
      return [page, 0];
    case "PageUp":
      return [-page, 0];
    case "Home":
      return [mod ? -rowCount : 0, -COLUMNS.length];
    case "End":
      return [mod ? rowCount : 0, COLUMNS.length];
    default:
      return null;
  }
}
