import { isColourless } from "./colourless.ts";
import { guessColumns } from "./columns.ts";
import type { Draft, Fate } from "./draft.ts";
import { isGaugeOnly } from "./figures.ts";
import { type ChartColumn, isHeadLine, readHeads } from "./heads.ts";
import { decideLabels, type Labeller, looksLikeLabel } from "./label.ts";
import { mine, type Place, placedColour } from "./mine.ts";
import { isHeading, isPageNumber, isProse } from "./notes.ts";
import { type Manner, readRow } from "./read-row.ts";
import { withoutRowWord } from "./row-word.ts";
import { type Grid, isRule, type Row } from "./split.ts";
import { saysUnused } from "./unused.ts";
import { colourSpanOf, coloursOf } from "./words.ts";

export type GridOptions = {
  readonly sizes: "metric" | "awg";
  readonly columns: readonly ChartColumn[] | null;
};

/** One row and what became of it; a lead has its draft. */
export type Reckoned = { readonly row: Row; readonly fate: Fate; readonly draft: Draft | null };
export type ReadGrid = {
  readonly rows: readonly Reckoned[];
  /** What the columns were taken for; of the first heads where there are several. */
  readonly columns: readonly ChartColumn[];
  readonly hasHeads: boolean;
};

type Section = { readonly head: Row | null; readonly rows: readonly Row[] };

/** Reads the rows of one chart. Every row gets its fate, in the order of the source. */
export function readGrid(given: Grid, asked: GridOptions): ReadGrid {
  const options = { ...asked, columns: asked.columns ?? given.columns ?? null };
  const grid = options.columns === null ? withoutRowWord(given) : given;
  const isWhole = grid.kind === "line";
  const sections = sectionsOf(grid, isWhole);
  const rows: Reckoned[] = [];
  let columns: readonly ChartColumn[] = [];
  let hasHeads = false;
  for (const [index, section] of sections.entries()) {
    // What stands before the first heads is read by them: titles mostly, but a row may have slipped there.
    const guide = index === 0 && section.head === null ? (sections[1] ?? section) : section;
    const isPreface = guide !== section;
    const manner = mannerOf(guide, options, isWhole);
    if (section.head) rows.push({ row: section.head, fate: "head", draft: null });
    rows.push(...readSection(section, manner, isPreface));
    if (section.head && !hasHeads) columns = manner.columns;
    hasHeads ||= section.head !== null && !isWhole;
    if (!hasHeads) columns = manner.columns;
  }
  return { rows, columns, hasHeads };
}

function sectionsOf(grid: Grid, isWhole: boolean): readonly Section[] {
  const sections: { head: Row | null; rows: Row[] }[] = [{ head: null, rows: [] }];
  let last = "";
  for (const row of grid.rows) {
    const isHead = isWhole ? isHeadLine(row.cells[0] ?? "") : readHeads(row.cells) !== null;
    const words = row.cells.join("\t").toLowerCase();
    // The same heads again, on the next page, change nothing.
    if (isHead && words !== last) {
      sections.push({ head: row, rows: [] });
      last = words;
    } else sections.at(-1)!.rows.push(row);
  }
  return sections.filter(({ head, rows }) => head !== null || rows.length > 0);
}

function isAgain(row: Row, head: Row | null): boolean {
  return head !== null && row.cells.join("\t").toLowerCase() === head.cells.join("\t").toLowerCase();
}

function mannerOf(section: Section, options: GridOptions, isWhole: boolean): Manner {
  const content = section.rows.filter((row) => !isRule(row.source) && !isAgain(row, section.head));
  const several = content.filter(({ cells }) => cells.filter(Boolean).length > 1);
  const table = (several.length ? several : content).map(({ cells }) => cells);
  const heads = isWhole ? null : (section.head?.cells ?? null);
  const columns: readonly ChartColumn[] =
    options.columns ?? (isWhole ? ["function"] : guessColumns(table, heads));
  const sizes = sizesOf(table, columns, heads) ?? options.sizes;
  const labellers: (Labeller | null)[] = columns.map(() => null);
  if (!columns.includes("label") && options.columns === null) {
    for (const [index, role] of columns.entries()) {
      if (role !== "function" && role !== "text" && role !== "connector") continue;
      const cells = (isWhole ? content.map((row) => row.cells) : table).map((row) => row[index] ?? "");
      const labeller = decideLabels(isWhole ? cells.filter((cell) => !isProse(cell)) : cells);
      if (!labeller) continue;
      labellers[index] = labeller;
      break;
    }
  }
  return { columns, labellers, sizes, places: placesOf(columns, labellers, isWhole ? content : several) };
}

/** What bare sizes are written in, where the head or the sizes themselves tell. */
function sizesOf(
  rows: readonly (readonly string[])[],
  columns: readonly ChartColumn[],
  heads: readonly string[] | null,
): "metric" | "awg" | null {
  if (heads?.some((head) => /awg|gauge|guage|\bga\b/i.test(head))) return "awg";
  if (heads?.some((head) => /mm|²/i.test(head))) return "metric";
  const at = columns.indexOf("size");
  const cells = at < 0 ? [] : rows.map((row) => row[at] ?? "").filter((cell) => /^\d+(?:\/0)?$/.test(cell));
  const isWhole = rows.every((row) => !/\d[.,]\d/.test(row[at] ?? ""));
  return isWhole && cells.length > 0 && cells.filter(isGaugeOnly).length >= cells.length * 0.5 ? "awg" : null;
}

/**
 * Letters of colours ("sw", "gr") are too short to be told from other words of a line; where they stand behind every
 * label, or last in every line, they can be nothing else.
 */
function placesOf(
  columns: readonly ChartColumn[],
  labellers: readonly (Labeller | null)[],
  rows: readonly Row[],
): readonly (Place | null)[] {
  if (columns.includes("colour")) return columns.map(() => null);
  return columns.map((role, index) => {
    if (role !== "function" && role !== "text") return null;
    const labeller = labellers[index];
    const texts = rows
      .map(({ cells }) => cells[index] ?? "")
      .filter(
        (cell) => cell !== "" && cell.length < 200 && !saysUnused(cell) && (!labeller || labeller(cell)),
      )
      .map((cell) => labeller?.(cell)?.rest ?? cell);
    if (texts.length < 3) return null;
    return (
      (["first", "last"] as const).find((place) => {
        const found = texts.map((text) => {
          const spelt = colourSpanOf(text);
          const span = spelt ?? placedColour(text, place);
          const isHere = spelt === null ? span !== null : isSpeltAt(text, place);
          return { words: span && isHere ? text.slice(span.start, span.end) : "", isSpelt: spelt !== null };
        });
        const colours = coloursOf(found.map(({ words }) => words));
        const letters = found.filter(({ words, isSpelt }) => words !== "" && !isSpelt).length;
        const read = found.filter(({ words, isSpelt }, at) => words !== "" && !isSpelt && colours[at]).length;
        const all = found.filter(({ words }, at) => words !== "" && colours[at]).length;
        return letters > 0 && read >= letters * 0.75 && all >= texts.length * 0.7;
      }) ?? null
    );
  });
}

function isSpeltAt(text: string, place: Place): boolean {
  const span = colourSpanOf(text);
  const around = span && (place === "first" ? text.slice(0, span.start) : text.slice(span.end));
  return around !== null && !/[\p{L}]/u.test(around);
}

function readSection(section: Section, manner: Manner, isPreface: boolean): readonly Reckoned[] {
  const joined = joinWrapped(section.rows, manner);
  const drafts = joined.map(({ row }) =>
    isRule(row.source) || isAgain(row, section.head) ? null : readRow(row, manner),
  );
  const texts = drafts.map((draft) => draft?.colourText ?? "");
  const colours = coloursOf(texts);
  const said = drafts.filter((draft) => draft !== null);
  const hasLabels = said.filter(({ label }) => label !== null).length >= said.length * 0.4;
  const isColour = texts.map((text, index) => text !== "" && (colours[index] !== null || isColourless(text)));
  const coloured = isColour.filter(Boolean).length;
  const hasColours = coloured >= said.length * 0.4;
  const labelled = drafts.findIndex(
    (draft) => draft !== null && draft.label !== null && !isHeading(draft.source),
  );
  const isLead = joined.map(({ row }, index) => {
    const draft = drafts[index];
    if (!draft || isPageNumber(row.source)) return false;
    if (draft.label !== null && isTitle(row, draft, index, labelled)) return false;
    if (draft.label !== null)
      return !isPreface || (row.cells.filter(Boolean).length > 1 && looksLikeLabel(draft.label));
    if (isPreface) return false;
    const isColoured = isColour[index]!;
    if (isColoured && hasLabels && (index < labelled || isHeading(row.source))) return false;
    if (isColoured)
      return (
        !(hasLabels && isProse(row.source)) &&
        (draft.text !== "" || row.cells.filter(Boolean).length > 1 || !hasLabels)
      );
    if (hasLabels || isProse(row.source) || isHeading(row.source)) return false;
    if (hasColours) return draft.reading.certain && index > 0;
    return draft.reading.candidates.length > 0 && !isProse(row.source) && !isHeading(row.source);
  });
  const first = isLead.indexOf(true);
  const last = isLead.lastIndexOf(true);
  const result: Reckoned[] = [];
  for (const [index, { row, more }] of joined.entries()) {
    const draft = drafts[index] ?? null;
    const before = joined[index - 1]?.row.line;
    const isApart = before !== undefined && row.line - before > 1;
    let fate: Fate = "note";
    if (isRule(row.source)) fate = "rule";
    else if (draft === null) fate = "head";
    else if (isLead[index]) fate = "lead";
    else if (!isPreface && looksLikeRow(row, draft, index > first && index < last, isApart)) fate = "unread";
    result.push({ row, fate, draft: fate === "lead" ? draft : null });
    for (const part of more) result.push({ row: part, fate: "continued", draft: null });
  }
  return result;
}

/** "12N black plug", "8.3  Radio connector XR1": a heading that begins as a row does. */
function isTitle(row: Row, draft: Draft, index: number, firstRow: number): boolean {
  if (!isHeading(row.source)) return false;
  return index < firstRow || draft.reading.candidates.length === 0;
}

function looksLikeRow(row: Row, draft: Draft, isAmong: boolean, isApart: boolean): boolean {
  const { source } = row;
  if (isPageNumber(source) || isProse(source) || isHeading(source)) return false;
  const filled = row.cells.filter(Boolean).length;
  if (filled === 1 && row.cells.length > 1 && row.cells[0] !== "") return false;
  if (draft.colourText !== "" && filled > 1) return true;
  return isAmong && !isApart;
}

type Joined = { readonly row: Row; readonly more: readonly Row[] };

/** Cells that were broken over several lines: a row that has words alone, under words of the row before. */
function joinWrapped(rows: readonly Row[], manner: Manner): readonly Joined[] {
  const joined: { row: Row; more: Row[] }[] = [];
  for (const row of rows) {
    const before = joined.at(-1);
    if (before && goesOn(row, before.row, before.more.at(-1) ?? before.row, manner)) {
      const cells = Array.from({ length: Math.max(row.cells.length, before.row.cells.length) }, (_, index) =>
        `${before.row.cells[index] ?? ""} ${row.cells[index] ?? ""}`.trim(),
      );
      before.more.push(row);
      before.row = { ...before.row, cells, source: `${before.row.source}\n${row.source}` };
    } else joined.push({ row, more: [] });
  }
  return joined;
}

function goesOn(row: Row, before: Row, above: Row, manner: Manner): boolean {
  if (row.line - above.line > 1 || isRule(row.source) || isRule(before.source)) return false;
  const { columns, labellers } = manner;
  if (columns.length === 1) {
    const labeller = labellers[0];
    if (!labeller || !row.isIndented || before.isIndented || isProse(row.source)) return false;
    const words = row.cells[0] ?? "";
    return (
      labeller(before.cells[0] ?? "") !== null &&
      labeller(words) === null &&
      mine(words, null, true).colourText === ""
    );
  }
  if (row.cells[0] !== "") return false;
  const at = columns.indexOf("label");
  if (at < 0 || !looksLikeLabel(before.cells[at] ?? "")) return false;
  const filled = row.cells.flatMap((cell, index) => (cell === "" ? [] : [columns[index] ?? "text"]));
  if (filled.length === 0 || filled.length > 2) return false;
  return (
    filled.every((role) => role === "function" || role === "text") ||
    (filled.length === 1 && filled[0] === "colour")
  );
}
