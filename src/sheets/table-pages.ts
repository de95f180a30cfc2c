import type { Primitive } from "../layout/drawing.ts";
import type { Figure } from "./connector-face.ts";
import { bottom, type Rect } from "./paper-size.ts";
import { HAIR, line, MIDDLE, RULE, words } from "./part-drawing/pen.ts";
import { swatch } from "./part-drawing/swatch.ts";
import {
  CELL_LINE,
  CELL_PAD,
  CELL_SIZE,
  HEAD_SIZE,
  hasSwatch,
  type SetColumn,
  SWATCH_ROOM,
  setColumns,
  wrapRow,
} from "./table-columns.ts";
import type { Cell, Table } from "./tables/table.ts";
import { wrapText } from "./wrap.ts";

/** A table with what stands above it; its head, figure and first row stay together. */
export type Section = {
  readonly table: Table;
  readonly figure?: Figure | null;
  /** What the sheets it stands on are called in the title block. */
  readonly group: string;
  /** Sections of one family share their column widths. */
  readonly family?: string;
  /** Stands on one page where its height is no more than this part of a page. */
  readonly whole?: number;
  /** Lines under the title, before the table's own remark. */
  readonly lines?: readonly string[];
};

const TITLE = { size: 16, height: 24 } as const;
const REMARK = { size: 10, line: 13 } as const;
const ROW_PAD = 7;
const GAP = 18;

/**
 * Sets sections one below the other over as many pages as they need. A row is never cut: one that does not fit
 * starts the next page, under the table's head, which is repeated.
 * @param area what each page offers
 * @returns the items of each page, at least one page
 */
export function setSections(sections: readonly Section[], area: Rect): readonly SetPage[] {
  const setter = new Setter(area);
  for (const section of sections) setter.section(section, columnsOf(section, sections, area.width));
  return setter.pages;
}

/** What stands on one page, and the groups of the sections on it, in order. */
export type SetPage = { readonly items: readonly Primitive[]; readonly groups: readonly string[] };

const familyColumns = new WeakMap<readonly Section[], Map<string, readonly SetColumn[]>>();

function columnsOf(section: Section, all: readonly Section[], width: number): readonly SetColumn[] {
  const { family, table } = section;
  if (family === undefined) return setColumns(table, width);
  const known = familyColumns.get(all) ?? new Map<string, readonly SetColumn[]>();
  familyColumns.set(all, known);
  const columns = known.get(family) ?? setColumns(joined(all, family, table), width);
  known.set(family, columns);
  return columns;
}

function joined(
  all: readonly Section[],
  family: string,
  { columns }: Table,
): Pick<Table, "columns" | "rows"> {
  const rows = all.filter((one) => one.family === family).flatMap((one) => one.table.rows);
  return { columns, rows };
}

class Setter {
  readonly pages: { items: Primitive[]; groups: string[] }[] = [{ items: [], groups: [] }];
  private group = "";
  private y: number;

  constructor(private readonly area: Rect) {
    this.y = area.y;
  }

  section({ table, figure, group, whole = WHOLE, lines = [] }: Section, columns: readonly SetColumn[]): void {
    const { x, width } = this.area;
    const remarks = [...lines, table.remark]
      .filter((text) => text !== "")
      .flatMap((text) => wrapText(text, REMARK.size, "regular", width));
    const heads = headLines(table, columns);
    const headHeight = heightOfHead(heads);
    const first = table.rows[0];
    const above = TITLE.height + remarks.length * REMARK.line + (figure ? figure.height + 8 : 0) + 4;
    const most = this.mostLines(heads);
    const heightOfRows = (rows: Table["rows"]): number =>
      rows.reduce((sum, row) => sum + heightOf(clipped(wrapRow(row, columns), most)), 0);
    let firstHeight = first ? headHeight + heightOfRows(table.rows.slice(0, TOGETHER)) : CELL_LINE + ROW_PAD;
    if (table.rows.length <= MOST_WHOLE) {
      const all = headHeight + heightOfRows(table.rows);
      if (above + all <= this.area.height * whole) firstHeight = all;
    }
    if (this.y > this.area.y) this.y += GAP;
    if (this.y > this.area.y && this.y + above + firstHeight > bottom(this.area)) this.turn();
    this.group = group;
    this.mark();
    this.add(...words(x, this.y + 16, table.title, { size: TITLE.size, weight: "bold", room: width }));
    this.y += TITLE.height;
    for (const text of remarks) {
      this.add(...words(x, this.y + 9, text, { size: REMARK.size, room: width + 1 }));
      this.y += REMARK.line;
    }
    if (figure) {
      this.add(...figure.draw(x, this.y + 3));
      this.y += figure.height + 8;
    }
    this.y += 4;
    if (!first) {
      this.add(...words(x, this.y + 9, table.empty, { size: CELL_SIZE, colour: "quiet", room: width }));
      this.y += CELL_LINE + ROW_PAD;
      return;
    }
    this.head(columns, heads);
    for (const row of table.rows) this.row(row, table, columns, heads);
  }

  private row(
    row: readonly Cell[],
    table: Table,
    columns: readonly SetColumn[],
    heads: readonly (readonly string[])[],
  ): void {
    const wrapped = clipped(wrapRow(row, columns), this.mostLines(heads));
    const height = heightOf(wrapped);
    if (this.y + height > bottom(this.area)) {
      this.turn();
      this.mark();
      this.add(
        ...words(this.area.x, this.y + 11, `${table.title}, continued`, {
          size: 11,
          weight: "bold",
          room: this.area.width,
        }),
      );
      this.y += CONTINUED;
      this.head(columns, heads);
    }
    for (const [at, { index, x, width }] of columns.entries()) {
      const cell = row[index];
      if (!cell) continue;
      const left = this.area.x + x + CELL_PAD;
      const before = hasSwatch(cell) ? SWATCH_ROOM : 0;
      if (cell.swatch !== undefined) this.add(...swatch(left, this.y + 4, 16, 9, cell.swatch));
      for (const [lineIndex, text] of (wrapped[at] ?? []).entries()) {
        this.add(
          ...words(left + before, this.y + ROW_PAD / 2 + 10 + lineIndex * CELL_LINE - 1.2, text, {
            size: CELL_SIZE,
            weight: cell.bold ? "bold" : "regular",
            room: width,
          }),
        );
      }
    }
    this.y += height;
    this.rule(columns, HAIR * 0.6, "quiet");
  }

  private head(columns: readonly SetColumn[], heads: readonly (readonly string[])[]): void {
    this.rule(columns, RULE);
    const height = heightOfHead(heads);
    for (const [at, { x, width }] of columns.entries()) {
      const lines = heads[at] ?? [];
      const top = this.y + height - lines.length * CELL_LINE - 2;
      for (const [index, text] of lines.entries()) {
        this.add(
          ...words(this.area.x + x + CELL_PAD, top + CELL_LINE * (index + 0.5) + HEAD_SIZE * MIDDLE, text, {
            size: HEAD_SIZE,
            weight: "bold",
            room: width,
          }),
        );
      }
    }
    this.y += height;
    this.rule(columns, RULE);
  }

  private rule(columns: readonly SetColumn[], width: number, colour: "ink" | "quiet" = "ink"): void {
    const last = columns.at(-1);
    const to = last ? last.x + last.width : this.area.width;
    this.add(line(this.area.x, this.y, this.area.x + to, this.y, width, colour));
  }

  private mostLines(heads: readonly (readonly string[])[]): number {
    const room = this.area.height - CONTINUED - heightOfHead(heads) - ROW_PAD;
    return Math.max(1, Math.floor(room / CELL_LINE));
  }

  private turn(): void {
    this.pages.push({ items: [], groups: [] });
    this.y = this.area.y;
  }

  /** Notes that the section being set stands on this page. */
  private mark(): void {
    const { groups } = this.pages.at(-1)!;
    if (!groups.includes(this.group)) groups.push(this.group);
  }

  private add(...items: readonly Primitive[]): void {
    this.pages.at(-1)!.items.push(...items);
  }
}

const CONTINUED = 20;
/** A table's head is not left alone at the foot of a page: this many rows stay with it. */
const TOGETHER = 3;
/** A table lower than this part of a page is not parted, nor measured for it where it has more rows than this. */
const WHOLE = 0.45;
const MOST_WHOLE = 60;

/** Only a note longer than a whole page is shortened; it stands in full in the file. */
function clipped(wrapped: readonly (readonly string[])[], most: number): readonly (readonly string[])[] {
  return wrapped.map((lines) => (lines.length > most ? [...lines.slice(0, most - 1), "…"] : lines));
}

function headLines(table: Table, columns: readonly SetColumn[]): readonly (readonly string[])[] {
  return columns.map(({ index, width }) =>
    wrapText(table.columns[index]!.title, HEAD_SIZE, "bold", Math.max(width - 2 * CELL_PAD, HEAD_SIZE)),
  );
}

function heightOfHead(heads: readonly (readonly string[])[]): number {
  return Math.max(1, ...heads.map((lines) => lines.length)) * CELL_LINE + 4;
}

function heightOf(wrapped: readonly (readonly string[])[]): number {
  return Math.max(1, ...wrapped.map((lines) => lines.length)) * CELL_LINE + ROW_PAD;
}
