import type { WireId } from "../../graph/harness.ts";
import { splitCells } from "../../match/cells.ts";
import { COLUMNS, type ColumnId, cellText, columnName, type Sheet } from "./table-model.ts";
import type { Block } from "./write-cells.ts";

/** A block of cells as a spreadsheet takes it: tabs between cells, a line a row, quotes where a text needs them. */
export function toTsv(block: Block): string {
  return block.map((row) => row.map(quoted).join("\t")).join("\r\n");
}

function quoted(text: string): string {
  return /[\t\r\n"]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** Reads what a spreadsheet put on the clipboard. */
export function fromTsv(text: string): Block {
  return splitCells(text, "\t");
}

/** The texts of a range of cells. */
export function rangeText(
  sheet: Sheet,
  rows: readonly WireId[],
  range: { readonly top: number; readonly bottom: number; readonly left: number; readonly right: number },
): Block {
  return rows.slice(range.top, range.bottom + 1).map((id) => {
    const wire = sheet.harness.wires[id];
    return COLUMNS.slice(range.left, range.right + 1).map((column) =>
      wire ? cellText(sheet, wire, column.id) : "",
    );
  });
}

/** True where a pasted block's first row repeats the table's own heads: it is not a wire. */
export function isHeadRow(row: readonly string[], left: number): boolean {
  const heads = row.map((text, index) => {
    const id: ColumnId | undefined = COLUMNS[left + index]?.id;
    const shown = text.trim().toLowerCase();
    return (
      id !== undefined &&
      [columnName(id, "metric"), columnName(id, "awg"), id].some((name) => name.toLowerCase() === shown)
    );
  });
  return heads.length > 1 && heads.every(Boolean);
}
