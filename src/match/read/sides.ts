import { isOnlyColour } from "./columns.ts";
import { type ChartColumn, readHeads } from "./heads.ts";
import { decideLabels, isLabelSet, labelCell, looksLikeLabel } from "./label.ts";
import { type Grid, isRule, type Row } from "./split.ts";
import { saysUnused } from "./unused.ts";
import { coloursOf, functionReading } from "./words.ts";

/**
 * Two charts whose rows stand side by side: the kinds of columns come twice.
 * @returns the charts apart, left first; `null` where there is one
 */
export function findSides(grid: Grid): readonly [Grid, Grid] | null {
  const rows = grid.rows.filter(({ source }) => !isRule(source));
  const width = Math.max(0, ...rows.map(({ cells }) => cells.length));
  if (width < 2 || width > 40) return null;
  const cut = cutByHeads(rows) ?? cutByContents(rows, width);
  if (cut === null) return null;
  return [part(grid, 0, cut), part(grid, cut, Number.POSITIVE_INFINITY)];
}

function part(grid: Grid, from: number, to: number): Grid {
  const rows = grid.rows.flatMap((row): readonly Row[] => {
    const cells = row.cells.slice(from, to);
    if (cells.every((cell) => cell === "")) return [];
    const source = row.cells.length <= 1 ? row.source : cells.join("  ").trim();
    return [{ ...row, cells, source }];
  });
  return { kind: grid.kind, rows };
}

function cutByHeads(rows: readonly Row[]): number | null {
  for (const { cells } of rows.slice(0, 20)) {
    const roles = readHeads(cells);
    if (!roles) continue;
    const cut = bestCut(
      roles,
      (role) => role === "function",
      (role) => role,
    );
    if (cut !== null) return cut;
  }
  return null;
}

type Kind = "label" | "colour" | "function" | "mixed" | "text" | "blank";

function cutByContents(rows: readonly Row[], width: number): number | null {
  const table = rows.filter(({ cells }) => cells.filter(Boolean).length >= 2 && !readHeads(cells));
  if (table.length < 2) return null;
  const kinds = Array.from({ length: width }, (_, index) =>
    kindOf(table.map(({ cells }) => cells[index] ?? "").filter(Boolean)),
  );
  const mixed = kinds.flatMap((kind, index) => (kind === "mixed" ? [index] : []));
  if (mixed.length === 2 && kinds.every((kind) => kind === "mixed" || kind === "blank")) return mixed[1]!;
  return bestCut(
    kinds,
    (kind) => kind === "function",
    (kind) => (kind === "blank" ? "text" : kind) as ChartColumn,
  );
}

/** Where the kinds of columns begin anew: each side has words and what names its leads. */
function bestCut<K>(
  kinds: readonly K[],
  isFunction: (kind: K) => boolean,
  role: (kind: K) => ChartColumn | Kind,
): number | null {
  let best: number | null = null;
  let most = 0;
  for (let cut = 1; cut < kinds.length; cut++) {
    const left = kinds.slice(0, cut);
    const right = kinds.slice(cut);
    if (!left.some(isFunction) || !right.some(isFunction)) continue;
    const has = (side: readonly K[], wanted: string) => side.some((kind) => role(kind) === wanted);
    const labels = has(left, "label") && has(right, "label");
    const colours = has(left, "colour") && has(right, "colour");
    const noLabels = !has(left, "label") && !has(right, "label");
    if (!labels && !(colours && noLabels)) continue;
    const said = (side: readonly K[]) => side.map(role).filter((kind) => kind !== "text");
    const same = String(said(left)) === String(said(right));
    const mirrored = String(said(left)) === String(said(right).reverse());
    const worth = 1 + (same ? 4 : 0) + (mirrored ? 3 : 0) + (role(kinds[cut]!) === role(kinds[0]!) ? 2 : 0);
    if (worth <= most) continue;
    best = cut;
    most = worth;
  }
  return best;
}

function kindOf(cells: readonly string[]): Kind {
  if (cells.length < 2) return cells.length === 0 ? "blank" : "text";
  const labels = cells.map(labelCell);
  // Running numbers of three figures are wires, not cavities.
  const isLabel =
    isLabelSet(labels) && cells.every(looksLikeLabel) && !cells.every((cell) => /^\d{3,}$/.test(cell));
  const said = cells.filter((cell) => !saysUnused(cell));
  if (isLabel) return "label";
  if (said.length === 0) return "text";
  const share = (count: number) => count / said.length;
  const colours = coloursOf(said);
  const only = said.filter((cell, index) => colours[index] !== null && isOnlyColour(cell)).length;
  if (share(only) >= 0.6 && !said.every((cell) => /^[LR]$/i.test(cell))) return "colour";
  const labeller = decideLabels(cells);
  const carried = labeller ? cells.flatMap((cell) => labeller(cell) ?? []) : [];
  if (
    carried.length >= cells.length * 0.7 &&
    carried.filter(({ rest }) => rest !== "").length >= carried.length * 0.7
  )
    return "mixed";
  return share(said.filter((cell) => functionReading(cell).candidates.length > 0).length) >= 0.5
    ? "function"
    : "text";
}
