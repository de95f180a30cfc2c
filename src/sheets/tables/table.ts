import type { Colour, Harness } from "../../graph/harness.ts";
import type { Traced } from "../../graph/trace.ts";

/** What a table is made from. */
export type TableSource = {
  readonly harness: Harness;
  readonly traced: Traced;
};

export type Cell = {
  readonly text: string;
  /** Drawn as a swatch before the text: a colour, or `null` for a lead whose colour nobody has stated. */
  readonly swatch?: Colour | null;
  readonly bold?: boolean;
};

export type Column = {
  /** Stable name, for a spreadsheet's head and for tests. */
  readonly id: string;
  readonly title: string;
  /** The width beyond which a cell wraps, in characters. */
  readonly widest: number;
};

/** A table as data: the papers page it, a spreadsheet takes it as it is. */
export type Table = {
  readonly id: string;
  readonly title: string;
  /** A sentence under the title; "" where none is needed. */
  readonly remark: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
  /** What stands in the place of rows where there are none. */
  readonly empty: string;
};

export const cell = (text: string): Cell => ({ text });
export const strong = (text: string): Cell => ({ text, bold: true });

export function column(id: string, title: string, widest: number): Column {
  return { id, title, widest };
}

/** The text of a row's cell by its column's id. */
export function textAt(table: Table, row: readonly Cell[], id: string): string {
  return row[table.columns.findIndex((one) => one.id === id)]?.text ?? "";
}
