import { isOnlyColour } from "./columns.ts";
import { squeeze } from "./fold.ts";
import { readHead } from "./heads.ts";
import { looksLikeLabel } from "./label.ts";
import type { Line } from "./lines.ts";
import type { Grid, Row } from "./split.ts";
import { coloursOf } from "./words.ts";

const LONGEST_CELL = 60;

/**
 * Tables copied from some pages and documents come with a cell to a line: "1", "red", "battery", "2", "black", … They
 * are put together again where every so many lines a label or a colour stands.
 * @returns one way for each width that fits; mostly none
 */
export function stacked(lines: readonly Line[]): readonly Grid[] {
  if (lines.length < 6 || lines.some(({ text }) => text.trim().length > LONGEST_CELL)) return [];
  const cells = lines.map(({ text }) => squeeze(text.normalize("NFC")));
  const isLabel = cells.map(looksLikeLabel);
  const colours = coloursOf(cells);
  const keys = cells.map(
    (_, index) => isLabel[index] || (colours[index] !== null && isOnlyColour(cells[index]!)),
  );
  if (keys.filter(Boolean).length < lines.length * 0.25) return [];
  const grids: Grid[] = [];
  for (let width = 2; width <= 6; width++) {
    for (let start = 0; start < Math.min(width + 2, lines.length - 2 * width); start++) {
      const count = Math.floor((lines.length - start) / width);
      const column = (offset: number) =>
        Array.from({ length: count }, (_, row) => start + row * width + offset);
      const fits = (offset: number) => {
        // The first row may be heads.
        const body = column(offset).slice(readHead(cells[start + offset]!) ? 1 : 0);
        return body.length >= 2 && body.filter((at) => keys[at]).length >= body.length * 0.85;
      };
      const others = Array.from({ length: width }, (_, offset) => offset).filter((offset) => !fits(offset));
      if (others.length === width || others.length === 0) continue;
      // A column of words between keys; were all keys, the width would be a multiple of the true one.
      grids.push({ kind: "stacked", rows: rowsOf(lines, cells, start, width) });
    }
  }
  return grids.slice(0, 4);
}

function rowsOf(
  lines: readonly Line[],
  cells: readonly string[],
  start: number,
  width: number,
): readonly Row[] {
  const rows: Row[] = [];
  const single = (at: number): Row => ({
    line: lines[at]!.line,
    source: lines[at]!.text,
    cells: [cells[at]!],
    isIndented: false,
  });
  let at = 0;
  for (; at < start; at++) rows.push(single(at));
  for (; at + width <= lines.length; at += width) {
    const part = lines.slice(at, at + width);
    let source = part[0]!.text;
    for (const [index, { line, text }] of part.slice(1).entries())
      source += "\n".repeat(line - part[index]!.line) + text;
    rows.push({ line: part[0]!.line, source, cells: cells.slice(at, at + width), isIndented: false });
  }
  for (; at < lines.length; at++) rows.push(single(at));
  return rows;
}
