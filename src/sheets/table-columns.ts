import { textWidth } from "../layout/text/measure.ts";
import type { Cell, Table } from "./tables/table.ts";
import { widestWord, wrapText } from "./wrap.ts";

/** Text of table cells, drawing units: 7.1 points. */
export const CELL_SIZE = 10;
export const HEAD_SIZE = 9.5;
export const CELL_LINE = 12.5;
export const CELL_PAD = 5;
export const SWATCH_ROOM = 21;
/** Mean advance of a letter at `CELL_SIZE`: how a column's widest count of characters becomes a width. */
const LETTER = CELL_SIZE * 0.5;

export type SetColumn = {
  /** Which of the table's columns. */
  readonly index: number;
  readonly x: number;
  readonly width: number;
};

/**
 * Widths of a table's columns in a given width: each as wide as its texts ask, up to its own widest; what is
 * missing is taken from those that can wrap, what is over goes to all. Columns with nothing in any row are left out.
 */
export function setColumns(table: Pick<Table, "columns" | "rows">, width: number): readonly SetColumn[] {
  const used = table.columns
    .map((_, index) => index)
    .filter(
      (index) =>
        index === 0 || table.rows.some((row) => (row[index]?.text ?? "") !== "" || hasSwatch(row[index])),
    );
  const asks = used.map((index) => {
    const column = table.columns[index]!;
    const most = column.widest * LETTER + 2 * CELL_PAD;
    let natural = textWidth(column.title, HEAD_SIZE, "bold");
    let least = widestWord(column.title, HEAD_SIZE, "bold");
    for (const row of table.rows) {
      const cell = row[index];
      if (!cell) continue;
      const weight = cell.bold ? "bold" : "regular";
      const before = hasSwatch(cell) ? SWATCH_ROOM : 0;
      natural = Math.max(natural, before + textWidth(cell.text, CELL_SIZE, weight));
      least = Math.max(least, before + widestWord(cell.text, CELL_SIZE, weight));
    }
    natural = Math.min(natural + 2 * CELL_PAD, most);
    return { natural, least: Math.min(least + 2 * CELL_PAD, natural) };
  });
  const total = asks.reduce((sum, ask) => sum + ask.natural, 0);
  const least = asks.reduce((sum, ask) => sum + ask.least, 0);
  const widths = asks.map((ask) => {
    if (total <= width) return (ask.natural * width) / Math.max(1, total);
    if (least <= width) {
      return ask.least + ((ask.natural - ask.least) * (width - least)) / Math.max(1e-9, total - least);
    }
    return (ask.least * width) / least;
  });
  let x = 0;
  return used.map((index, at) => {
    const column = { index, x, width: widths[at]! };
    x += column.width;
    return column;
  });
}

export function hasSwatch(cell: Cell | undefined): boolean {
  return cell?.swatch !== undefined;
}

/** A row's texts in lines, as its columns break them. */
export function wrapRow(row: readonly Cell[], columns: readonly SetColumn[]): readonly (readonly string[])[] {
  return columns.map(({ index, width }) => {
    const cell = row[index];
    if (!cell || cell.text === "") return [];
    const room = width - 2 * CELL_PAD - (hasSwatch(cell) ? SWATCH_ROOM : 0);
    return wrapText(cell.text, CELL_SIZE, cell.bold ? "bold" : "regular", Math.max(room, CELL_SIZE));
  });
}
