import type { ReadCharts } from "./chart.ts";
import { type Assembled, assemble } from "./read/assemble.ts";
import { withoutMarkup } from "./read/entities.ts";
import { squeeze } from "./read/fold.ts";
import type { ChartColumn } from "./read/heads.ts";
import { isHtml, isMarkedUp, linesOfPage, readHtml } from "./read/html.ts";
import { LONGEST_LINE, MOST_ROWS, sourceLines } from "./read/lines.ts";
import { isOneChart, together } from "./read/one-chart.ts";
import { type ReadGrid, readGrid } from "./read/read-grid.ts";
import { findSides } from "./read/sides.ts";
import { type Grid, unfold, waysToSplit } from "./read/split.ts";

export type { ChartColumn } from "./read/heads.ts";

export type ReadChartOptions = {
  /** How a bare number in a column of sizes is read; a head that says mm² or AWG decides. Metric unless told. */
  readonly sizes?: "metric" | "awg";
  /** What the columns are, where a person has said so. */
  readonly columns?: readonly ChartColumn[] | null;
};

/** A reading with what it took the table for; for those who show the columns. */
export type ReadTable = {
  readonly result: ReadCharts;
  readonly columns: readonly ChartColumn[];
  readonly hasHeads: boolean;
  readonly grids: readonly ReadGrid[];
};

/**
 * Reads a pinout chart: text of any layout, the source of a page with a table, or the rows of a sheet.
 * Several ways of splitting the text are tried; the one that is understood best counts. No line that holds something
 * is dropped: each is a lead, a note, unread, a head, or a rule; beyond 2000 rows a remark says where reading ended.
 * @returns one chart, or two that stood side by side; none where nothing was given or the text is none
 */
export function readCharts(
  input: string | readonly (readonly string[])[],
  options: ReadChartOptions = {},
): ReadCharts {
  return readTable(input, options).result;
}

/** As `readCharts`, and says what the columns were taken for. */
export function readTable(
  input: string | readonly (readonly string[])[],
  { sizes = "metric", columns = null }: ReadChartOptions = {},
): ReadTable {
  const { grids, remarks } =
    typeof input === "string" ? gridsOf(input) : { grids: [sheetGrid(input)], remarks: cutRemark(input) };
  let best: Try | null = null;
  for (const grid of grids) {
    if (grid.rows.length === 0) continue;
    for (const parts of columns === null ? [findSides(grid), [grid]] : [[grid]]) {
      if (parts === null) continue;
      const tried = tryGrids(parts, { sizes, columns });
      if (best === null || tried.worth > best.worth + 1e-9) best = tried;
    }
  }
  if (!best) return { result: { charts: [], remarks }, columns: [], hasHeads: false, grids: [] };
  const said = [...remarks, ...best.charts.flatMap((chart) => chart.remarks)];
  if (best.charts.length > 1) said.push("Two charts stand side by side; they are read as two.");
  return {
    result: { charts: best.charts.map(({ chart }) => chart), remarks: said },
    columns: best.grids[0]!.columns,
    hasHeads: best.grids[0]!.hasHeads,
    grids: best.grids,
  };
}

/** In what a row is worth; see `assemble`. */
const WORTH_OF_HEADS = 0.75;

type Try = {
  readonly grids: readonly ReadGrid[];
  readonly charts: readonly Assembled[];
  readonly worth: number;
};

function tryGrids(
  parts: readonly Grid[],
  options: { readonly sizes: "metric" | "awg"; readonly columns: readonly ChartColumn[] | null },
): Try {
  const apart = parts.map((part) => readGrid(part, options));
  const grids =
    apart.length === 2 && isOneChart(apart[0]!, apart[1]!) ? [together(apart[0]!, apart[1]!)] : apart;
  const charts = grids.map(assemble);
  let worth = 0;
  for (const [index, { worth: own, chart }] of charts.entries()) {
    // Heads that name the columns of a way of splitting speak for that way.
    worth += own + (grids[index]!.hasHeads ? chart.leads.length * WORTH_OF_HEADS : 0);
  }
  return { grids, charts, worth };
}

function gridsOf(given: string): { readonly grids: readonly Grid[]; readonly remarks: readonly string[] } {
  const text = given.startsWith("\ufeff") ? given.slice(1) : given;
  const { lines, remarks } = sourceLines(text);
  if (lines.length === 0) return { grids: [], remarks };
  if (isHtml(text.slice(0, 100_000))) {
    const page = readHtml(text.slice(0, 600_000), MOST_ROWS);
    return {
      grids: [{ ...page, rows: page.rows.slice(0, MOST_ROWS) }],
      remarks: [...remarks, ...cutRemark(page.rows)],
    };
  }
  if (isMarkedUp(text.slice(0, 100_000))) {
    const page = linesOfPage(text.slice(0, 600_000), MOST_ROWS);
    return {
      grids: waysToSplit(unfold(page.slice(0, MOST_ROWS))),
      remarks: [...remarks, ...cutRemark(page)],
    };
  }
  const bare = lines.map(({ line, text: words }) => ({ line, text: withoutMarkup(words) }));
  return { grids: waysToSplit(unfold(bare)), remarks };
}

function cutRemark(rows: readonly unknown[]): readonly string[] {
  return rows.length > MOST_ROWS ? [`Only the first ${MOST_ROWS} rows are read.`] : [];
}

function sheetGrid(rows: readonly (readonly string[])[]): Grid {
  return {
    kind: "sheet",
    rows: rows.slice(0, MOST_ROWS).flatMap((row, index) => {
      const cells = row.map((cell) => squeeze(cell.slice(0, LONGEST_LINE).normalize("NFC")));
      if (cells.every((cell) => cell === "")) return [];
      return [{ line: index + 1, source: row.join("\t"), cells, isIndented: false }];
    }),
  };
}
