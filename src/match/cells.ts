export type Separator = "\t" | ";" | "," | "|";

/**
 * Splits separated text into cells. A quoted cell may hold separators, line ends and doubled quotes; text after
 * the closing quote belongs to the cell. Nothing is lost: an unclosed quote runs to the end.
 * @returns rows of cells as written; a line end after the last row makes no empty row
 */
export function splitCells(text: string, separator: Separator): readonly (readonly string[])[] {
  if (text === "") return [];
  const plain = new RegExp(`[^\\r\\n${separator === "\t" ? "\\t" : `\\${separator}`}]*`, "y");
  const rest = (from: number): string => {
    plain.lastIndex = from;
    return plain.exec(text)![0];
  };
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 0;
  for (;;) {
    let cell: string;
    if (text[at] === '"') {
      let end = at + 1;
      while (end < text.length && (text[end] !== '"' || text[end + 1] === '"')) {
        end += text[end] === '"' ? 2 : 1;
      }
      const after = rest(Math.min(end + 1, text.length));
      cell = text.slice(at + 1, end).replaceAll('""', '"') + after;
      at = Math.min(end + 1, text.length) + after.length;
    } else {
      cell = rest(at);
      at += cell.length;
    }
    row.push(cell);
    if (text[at] === separator) {
      at++;
      continue;
    }
    rows.push(row);
    row = [];
    at += text[at] === "\r" && text[at + 1] === "\n" ? 2 : 1;
    if (at >= text.length) return rows;
  }
}

/** What separates the cells of a pasted text: a tab if there is one, else what stands in most lines. */
export function separatorOf(text: string): Separator {
  const lines = text.split(/\r\n|\r|\n/).filter((line) => line.trim() !== "");
  let best: Separator = "\t";
  let most = 0;
  for (const separator of ["\t", ";", "|", ","] as const) {
    const count = lines.filter((line) => line.includes(separator)).length;
    if (count > most) {
      best = separator;
      most = count;
    }
  }
  return best;
}
