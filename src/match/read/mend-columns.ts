import { sizeCell } from "./figures.ts";
import { readHead, readHeads } from "./heads.ts";
import type { Grid } from "./split.ts";

const MARK = /^(?:[-–—=:|/>→⇒]|-+>|\.{2,})$/;

/** A dash or an arrow that stands alone between the columns of nearly every row parts them and is no cell. */
export function withoutMarks(grid: Grid): Grid {
  const rows = grid.rows.filter(({ cells }) => cells.length > 2);
  const width = Math.min(8, Math.max(0, ...rows.map(({ cells }) => cells.length)));
  for (let at = 1; at < width; at++) {
    const cells = rows.flatMap((row) => row.cells[at] || []);
    const marks = cells.filter((cell) => MARK.test(cell));
    if (rows.length < 2 || marks.length < rows.length * 0.8 || new Set(marks).size > 1) continue;
    const mended = grid.rows.map((row) =>
      MARK.test(row.cells[at] ?? "") ? { ...row, cells: row.cells.filter((_, index) => index !== at) } : row,
    );
    return withoutMarks({ ...grid, rows: mended });
  }
  return grid;
}

/** "GA CKT" over "18 797": a size that stands so close to its neighbour that both came as one column. */
export function partSizes(grid: Grid): Grid {
  for (const [index, { cells: heads }] of grid.rows.slice(0, 20).entries()) {
    const at = heads.findIndex((head) => sizeAt(head) !== null);
    if (at < 0 || !readHeads(heads)) continue;
    const isFirst = sizeAt(heads[at]!) === "first";
    const body = grid.rows.slice(index + 1).flatMap(({ cells }) => cells[at] || []);
    const fits = body.filter((cell) => {
      const [size, rest] = parted(cell, isFirst);
      return rest !== "" && sizeCell(size, "metric") !== null && !/^(?:awg|ga|mm|mm²|mm2)\.?$/i.test(rest);
    });
    if (body.length < 2 || fits.length < body.length * 0.8) continue;
    const rows = grid.rows.map((row) => {
      const cell = row.cells[at];
      if (cell === undefined) return row;
      const [size, rest] = parted(cell, isFirst);
      const pair = isFirst ? [size, rest] : [rest, size];
      return { ...row, cells: [...row.cells.slice(0, at), ...pair, ...row.cells.slice(at + 1)] };
    });
    return { ...grid, rows };
  }
  return grid;
}

/** Where in a head of several words the size stands, if the others name another column. */
function sizeAt(head: string): "first" | "last" | null {
  const words = head.split(" ");
  if (words.length < 2 || words.length > 4) return null;
  const other = (rest: string) => {
    const role = readHead(rest);
    return role !== null && role !== "size" && !/[([]/.test(rest);
  };
  if (readHead(words[0]!) === "size" && other(words.slice(1).join(" "))) return "first";
  return readHead(words.at(-1)!) === "size" && other(words.slice(0, -1).join(" ")) ? "last" : null;
}

/** The size, and the rest. */
function parted(cell: string, isFirst: boolean): readonly [string, string] {
  const cut = isFirst ? cell.indexOf(" ") : cell.lastIndexOf(" ");
  if (cut < 0) return isFirst ? [cell, ""] : ["", cell];
  const [before, after] = [cell.slice(0, cut), cell.slice(cut + 1)];
  return isFirst ? [before, after] : [after, before];
}
