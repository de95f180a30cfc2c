import { decodeEntities as decode } from "./entities.ts";
import { squeeze } from "./fold.ts";
import type { Line } from "./lines.ts";
import type { Grid, Row } from "./split.ts";

/** True where a text is the source of a page with a table in it. */
export function isHtml(text: string): boolean {
  return /<tr[\s>]/i.test(text) && /<t[dh][\s>]/i.test(text);
}

/** The tags that begin a line of a page. */
const BLOCKS = "br|p|div|h[1-6]|li|ul|ol|dl|dt|dd|caption|section|article|header|footer|blockquote|hr";
const BLOCK = new RegExp(`^(?:${BLOCKS})$`);
const BLOCK_TAGS = new RegExp(`<\\/?(?:${BLOCKS})(?:\\s[^<>]*)?\\/?>`, "gi");

/** True where a text is the source of a page that has its rows as a list or as paragraphs, and no table. */
export function isMarkedUp(text: string): boolean {
  return (text.match(BLOCK_TAGS)?.length ?? 0) >= 2;
}

/** The lines of such a page; "dt" and "dd" are one line. */
export function linesOfPage(source: string, most: number): readonly Line[] {
  return readHtml(source, most).rows.map(({ line, source: text }) => ({ line, text }));
}

const MOST_CELLS = 60;

/**
 * The tables of a page's source as rows of plain text. What stands outside of them is kept as lines of one cell;
 * scripts, styles and comments are no text.
 */
export function readHtml(source: string, mostRows: number): Grid {
  const rows: Row[] = [];
  const tags =
    /<!--[\s\S]*?(?:-->|$)|<(script|style|head)\b[\s\S]*?(?:<\/\1\s*>|$)|<(\/?)([a-z][a-z\d]*)\b([^<>]*)>/gi;
  let line = 1;
  let next = source.indexOf("\n");
  let text = "";
  let textLine = 0;
  let isVerbatim = false;
  let cells: string[] | null = null;
  let cell: { span: number; down: number } | null = null;
  let open: { line: number } | null = null;
  let carried = new Map<number, { text: string; left: number }>();
  const lineAt = (index: number): number => {
    for (; next >= 0 && next < index; next = source.indexOf("\n", next + 1)) line++;
    return line;
  };
  const flush = () => {
    const words = squeeze(decode(text).normalize("NFC"));
    if (words !== "") rows.push({ line: textLine || 1, source: words, cells: [words], isIndented: false });
    text = "";
  };
  const carry = () => {
    for (let at = carried.get(cells!.length); at; at = carried.get(cells!.length)) {
      if (--at.left <= 0) carried.delete(cells!.length);
      cells!.push(at.text);
    }
  };
  const closeCell = () => {
    if (!cell || !cells) return;
    const words = squeeze(decode(text).normalize("NFC"));
    text = "";
    carry();
    if (cell.down > 1) carried.set(cells.length, { text: words, left: cell.down - 1 });
    cells.push(words);
    for (let extra = 1; extra < cell.span && cells.length < MOST_CELLS; extra++) cells.push("");
    cell = null;
  };
  const closeRow = () => {
    closeCell();
    if (cells && open) {
      carry();
      if (cells.some((words) => words !== ""))
        rows.push({ line: open.line, source: cells.filter(Boolean).join(" | "), cells, isIndented: false });
    }
    cells = null;
    open = null;
    flush();
  };
  let at = 0;
  for (const tag of source.matchAll(tags)) {
    if (rows.length > mostRows) break;
    addText(source.slice(at, tag.index), at);
    at = tag.index + tag[0].length;
    const name = tag[3]?.toLowerCase();
    if (name === undefined) continue;
    const closes = tag[2] === "/";
    if (name === "tr" || name === "table") {
      if (cells) closeRow();
      else flush();
      if (name === "table") carried = new Map();
      if (name === "tr" && !closes) {
        cells = [];
        open = { line: lineAt(tag.index) };
      }
    } else if (name === "td" || name === "th") {
      closeCell();
      flush();
      if (!closes && cells && cells.length < MOST_CELLS)
        cell = { span: attribute(tag[4]!, "colspan"), down: attribute(tag[4]!, "rowspan") };
    } else if (name === "dd" && !closes && !cell && text.trim() !== "")
      text = `${text.trim().replace(/:$/, "")}: `;
    else if (name === "dt" && closes) continue;
    else if (name === "pre") isVerbatim = !closes;
    else if (BLOCK.test(name)) {
      if (cell) text += " ";
      else flush();
    }
  }
  addText(source.slice(at), at);
  if (cells) closeRow();
  else flush();
  return { kind: "html", rows };

  function addText(part: string, from: number): void {
    if (part === "") return;
    if (isVerbatim && !cell) {
      for (const [index, words] of part.split("\n").entries()) {
        if (index > 0) flush();
        if (/\S/.test(words) && text.trim() === "") textLine = lineAt(from) + index;
        text += words;
      }
      return;
    }
    if (/\S/.test(part) && text.trim() === "") textLine = lineAt(from + part.search(/\S/));
    text += cell ? part : part.replace(/\s+/g, " ");
  }
}

function attribute(attributes: string, name: string): number {
  const value = Number(new RegExp(`${name}\\s*=\\s*["']?\\s*(\\d{1,3})`, "i").exec(attributes)?.[1] ?? 1);
  return value >= 1 && value <= MOST_CELLS ? value : 1;
}
