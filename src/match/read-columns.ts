import { looksLikeSize, plainWords, readChartColour, readFunction } from "./read-words.ts";

/** What a column of a pasted chart holds. `text` is kept as it is. */
export const COLUMN_ROLES = ["label", "function", "colour", "tracer", "size", "text"] as const;
export type ColumnRole = (typeof COLUMN_ROLES)[number];

/** Words that charts put over their columns, lower case (common practice, no source). */
const HEADS: readonly (readonly [ColumnRole, RegExp])[] = [
  [
    "label",
    /^(#|pin|pins|cavity|contact|position|pos\.?|terminal|way|no\.?|nr\.?|number|pin (no\.?|number|#)|cav\.?|label)$/,
  ],
  ["tracer", /^(tracer|stripe|second colou?r|tracer colou?r|stripe colou?r)$/],
  ["colour", /^(colou?r|wire colou?r|lead colou?r|base|base colou?r|col\.?|clr)$/],
  ["size", /^(size|wire size|gauge|awg|mm2|mm²|area|csa|cross[- ]section|size (mm2|mm²|awg)|section)$/],
  ["function", /^(function|signal|circuit|use|purpose|name|description|designation|signal name|assignment)$/],
];

/** The columns that a row of heads names; `null` where the row is not one. */
export function readHeads(row: readonly string[]): readonly ColumnRole[] | null {
  const taken = new Set<ColumnRole>();
  let known = 0;
  const roles = row.map((cell): ColumnRole => {
    const words = plainWords(cell);
    const role = HEADS.find(([, pattern]) => pattern.test(words))?.[0];
    if (!role || taken.has(role)) return "text";
    taken.add(role);
    known++;
    return role;
  });
  const filled = row.filter((cell) => cell !== "").length;
  return known > 0 && known * 2 >= filled ? roles : null;
}

/** Says what the columns are by what stands in them. */
export function guessColumns(rows: readonly (readonly string[])[]): readonly ColumnRole[] {
  const count = Math.max(0, ...rows.map((row) => row.length));
  const columns = Array.from({ length: count }, (_, index) =>
    rows.map((row) => row[index] ?? "").filter((cell) => cell !== ""),
  );
  const roles: ColumnRole[] = columns.map(() => "text");
  const free = (index: number) => roles[index] === "text";
  const take = (role: ColumnRole, index: number) => {
    if (index >= 0) roles[index] = role;
  };
  take(
    "colour",
    columns.findIndex((cells) => share(cells, (cell) => readChartColour(cell) !== null) >= 0.6),
  );
  take(
    "tracer",
    columns.findIndex(
      (cells, index) =>
        free(index) &&
        roles[index - 1] === "colour" &&
        share(cells, (cell) => readChartColour(cell)?.tracer === null) >= 0.6,
    ),
  );
  take(
    "label",
    columns.findIndex((cells, index) => free(index) && index <= 1 && isLabels(cells)),
  );
  take(
    "size",
    columns.findIndex((cells, index) => free(index) && share(cells, looksLikeSize) >= 0.6),
  );
  let best = -1;
  let most = -1;
  for (const [index, cells] of columns.entries()) {
    if (!free(index) || cells.length === 0) continue;
    const understood = cells.filter((cell) => readFunction(cell) !== null).length;
    const letters = cells.join("").replace(/[^\p{L}]/gu, "").length;
    const weight = understood * 1000 + letters;
    if (weight > most) {
      best = index;
      most = weight;
    }
  }
  if (most > 0) take("function", best);
  return roles;
}

function share(cells: readonly string[], fits: (cell: string) => boolean): number {
  return cells.length ? cells.filter(fits).length / cells.length : 0;
}

/** Short, each once, with a figure in it or one letter: what a housing prints beside its cavities. */
function isLabels(cells: readonly string[]): boolean {
  if (cells.length === 0) return false;
  const short = share(cells, (cell) =>
    /^([a-z]{0,2}[-.]?\d{1,4}[a-z]?|[a-z]|\d{1,2}[a-z]?\/\d{1,2})$/i.test(cell),
  );
  return short >= 0.8 && new Set(cells).size >= cells.length * 0.9;
}
