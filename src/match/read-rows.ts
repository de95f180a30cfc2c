import { functionOf } from "../catalogue/functions.ts";
import type { CavityRow } from "../graph/edits/housing.ts";
import type { Colour } from "../graph/harness.ts";
import { separatorOf, splitCells } from "./cells.ts";
import { colourCell } from "./read/columns.ts";
import { sizeCell } from "./read/figures.ts";
import { coloursOf, functionReading } from "./read/words.ts";
import { type ColumnRole, guessColumns, isHeads } from "./read-columns.ts";

/** One pasted row, and how it was understood. */
export type ReadRow = {
  /** What goes into the cavity. */
  readonly cavity: CavityRow;
  /** The cells as they were pasted. */
  readonly source: readonly string[];
  readonly function: string | null;
  readonly colour: Colour | null;
  readonly area_mm2: number | null;
  /** What was written and not understood; it stands in the cavity's chart text, word for word. */
  readonly kept: readonly string[];
};

export type ReadRows = {
  readonly rows: readonly ReadRow[];
  /** What each column was taken for. */
  readonly columns: readonly ColumnRole[];
  /** The first row named the columns and is no cavity. */
  readonly hasHeads: boolean;
  /** What a person should know before they take the rows. */
  readonly notes: readonly string[];
};

/** As many cavities as a housing may have. */
const MOST_ROWS = 2000;

/**
 * Reads rows pasted from a spreadsheet into cavities: label, function or the chart's words, colour, size.
 * Columns are known by their heads, or else by what stands in them. A text never loses what it did understand
 * and never hides what it did not: that is kept as chart text and named.
 * @param sizes how a bare number in a size column is read
 * @param chosen what the columns are, where a person has said so
 */
export function readRows(
  text: string,
  sizes: "metric" | "awg" = "metric",
  chosen: readonly ColumnRole[] | null = null,
): ReadRows {
  const cells = splitCells(text, separatorOf(text))
    .map((row) => row.map((cell) => cell.replace(/\s+/g, " ").trim()))
    .filter((row) => row.some((cell) => cell !== ""));
  const [first] = cells;
  if (!first) return { rows: [], columns: [], hasHeads: false, notes: [] };
  const hasHeads = isHeads(first);
  const body = (hasHeads ? cells.slice(1) : cells).slice(0, MOST_ROWS + 1);
  const columns = chosen ?? guessColumns(body, hasHeads ? first : null);
  const notes: string[] = [];
  if (body.length > MOST_ROWS) {
    notes.push(`Only the first ${MOST_ROWS} rows are taken; a housing has no more cavities.`);
  }
  const taken = body.slice(0, MOST_ROWS);
  const colours = columns.map((role, index) =>
    role === "colour" || role === "tracer" ? coloursOf(taken.map((row) => colourCell(row[index] ?? ""))) : [],
  );
  const rows = distinct(
    taken.map((row, index) => readRow(row, columns, sizes, (column) => colours[column]?.[index] ?? null)),
    notes,
  );
  return { rows, columns, hasHeads, notes };
}

function readRow(
  source: readonly string[],
  columns: readonly ColumnRole[],
  sizes: "metric" | "awg",
  colourOf: (column: number) => Colour | null,
): ReadRow {
  let label: string | null = null;
  const named: string[] = [];
  let colour: Colour | null = null;
  let tracer: Colour | null = null;
  let area_mm2: number | null = null;
  const words: string[] = [];
  const kept: string[] = [];
  const keep = (cell: string) => {
    words.push(cell);
    kept.push(cell);
  };
  for (const [index, cell] of source.entries()) {
    if (cell === "") continue;
    const role = columns[index] ?? "text";
    if (role === "label" && label === null) label = cell.slice(0, 400);
    else if (role === "function") named.push(cell);
    else if (role === "colour" || role === "tracer") {
      const read = colourOf(index);
      const again = role === "colour" ? colour : tracer;
      if (!read || again || (role === "tracer" && read.tracer)) keep(cell);
      else if (role === "colour") colour = read;
      else tracer = read;
    } else if (role === "size" && area_mm2 === null) {
      area_mm2 = sizeCell(cell, sizes);
      if (area_mm2 === null) keep(cell);
    } else keep(cell);
  }
  if (tracer && colour && !colour.tracer) colour = { ...colour, tracer: tracer.base };
  else if (tracer) keep(source[columns.indexOf("tracer")]!);
  const wording = named.join(" ");
  const { candidates, certain } = functionReading(wording);
  const id = certain ? (candidates[0]?.function ?? null) : null;
  if (id === null) kept.unshift(...named);
  words.unshift(...named);
  const hasLead = colour !== null || area_mm2 !== null;
  const cavity: CavityRow = {
    ...(label === null ? {} : { label }),
    ...(id === null ? {} : { function: id }),
    ...(words.length ? { text: words.join("; ").slice(0, 400) } : {}),
    ...(hasLead ? { lead: { colour, area_mm2: area_mm2 ?? ("unknown" as const) } } : {}),
  };
  return { cavity, source, function: id, colour, area_mm2, kept };
}

/** Two rows of one label would overwrite each other: the second gets a label of its own, and that is said. */
function distinct(rows: readonly ReadRow[], notes: string[]): readonly ReadRow[] {
  const seen = new Map<string, number>();
  const twice = new Set<string>();
  const result = rows.map((row) => {
    const { label } = row.cavity;
    if (label === undefined) return row;
    const count = (seen.get(label) ?? 0) + 1;
    seen.set(label, count);
    if (count === 1) return row;
    twice.add(label);
    return { ...row, cavity: { ...row.cavity, label: `${label} (${count})` } };
  });
  if (twice.size) {
    notes.push(
      `${[...twice].slice(0, 5).join(", ")} ${twice.size === 1 ? "stands" : "stand"} in more than one row; each row has a cavity of its own.`,
    );
  }
  return result;
}

/** How a row was understood, in words: "constant feed, RD, 1.5 mm²; kept as chart text: L/W". */
export function sayFunction(row: ReadRow): string {
  return row.function ? functionOf(row.function).name : "function not known";
}
