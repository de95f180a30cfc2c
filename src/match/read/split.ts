import { squeeze } from "./fold.ts";
import type { ChartColumn } from "./heads.ts";
import type { Line } from "./lines.ts";
import { partSizes, withoutMarks } from "./mend-columns.ts";
import { records } from "./records.ts";
import { stacked } from "./stacked.ts";

/** A line taken apart into cells. */
export type Row = {
  readonly line: number;
  readonly source: string;
  readonly cells: readonly string[];
  /** Begins further right than the lines of the chart do: may go on with the one before. */
  readonly isIndented: boolean;
};
export type Grid = {
  readonly kind: string;
  readonly rows: readonly Row[];
  /** What the columns are, where the way of splitting tells. */
  readonly columns?: readonly ChartColumn[];
};

/** A line of dashes and such, drawn under heads or between rows. */
export function isRule(text: string): boolean {
  const bare = text.trim();
  return bare.length >= 3 && /^[-=_+|:*~─━═│┼╪┃╋┬┴├┤┌┐└┘\s]+$/.test(bare) && /[-=_*~─━═┼]{2}/.test(bare);
}

const cell = (text: string): string =>
  squeeze(
    text
      .normalize("NFC")
      .replace(/\*\*|`/g, "")
      // Numbers in circles, as diagrams have them.
      .replace(/[\u2460-\u2473]/g, (circled) => `${circled.charCodeAt(0) - 0x245f} `),
  );

/** What is longer, or has more cells, is no row of a chart; it is kept as it is. */
const LONGEST_ROW = 1500;
const MOST_CELLS = 48;

/** The ways in which the lines of a text may be meant to be read as a table, and one that takes each line whole. */
export function waysToSplit(given: readonly Line[]): readonly Grid[] {
  const lines = withoutBullets(given);
  const content = lines.filter(({ text }) => !isRule(text));
  const blocks = records(lines);
  const grids: Grid[] = blocks ? [blocks] : [];
  const share = (test: (text: string) => boolean) =>
    content.length ? content.filter(({ text }) => test(text)).length / content.length : 0;
  const tabs = share((text) => text.trim().includes("\t"));
  const offer = (kind: string, split: (text: string) => readonly string[]) =>
    grids.push(toGrid(kind, lines, split));
  if (tabs >= 0.3) {
    const joined = joinQuoted(lines, "\t");
    grids.push(toGrid("tab", joined, (text) => splitQuoted(text, "\t")));
    if (content.some(({ text }) => /\S\t\t+\S/.test(text))) offer("tabs", (text) => text.trim().split(/\t+/));
  }
  const offerBlanks = () => {
    const hasSizes = share((text) => /\s{2,}\d+(?:[.,]\d+)?(?:\s{2,}|\s*$)/.test(text)) >= 0.3;
    // Under a column of sizes one may stand close to a long colour.
    const gap = hasSizes ? /\s{2,}|(?<=[a-z])\s(?=\d{1,2}(?:[.,]\d{1,2})?(?:\s{2,}|\s*$))/i : /\s{2,}/;
    grids.push(partSizes(withoutMarks(toGrid("blanks", lines, (text) => text.trim().split(gap)))));
  };
  const parting = commaThatParts(content);
  for (const separator of [";", "|", ","]) {
    const parts = (text: string) => (separator === "," ? parting.test(text) : text.includes(separator));
    if (share(parts) < (separator === "|" ? 0.3 : 0.4)) continue;
    const joined = joinQuoted(lines, separator);
    const isBarred = separator === "|" && share((text) => /^\s*\|/.test(text)) >= 0.5 * share(parts);
    const split = (text: string) =>
      separator === "," && !text.includes('"')
        ? text.split(parting)
        : splitQuoted(isBarred ? outerBars(text) : text, separator);
    grids.push(toGrid(separator, joined, split));
  }
  if (tabs < 0.3 && share((text) => /\S {2,}\S/.test(text)) >= 0.35) {
    const gutters = byGutters(lines);
    if (gutters) grids.push(partSizes(withoutMarks(gutters)));
    offerBlanks();
  }
  if (share((text) => /\S\s+(?:[-–—]|-{2,3})\s+\S/.test(text)) >= 0.5)
    offer("dash", (text) => text.split(/\s+(?:[-–—]|-{2,3})\s+/));
  if (share((text) => /\S\s*(?:[-=]+>|→|⇒|=)\s*\S/.test(text)) >= 0.5)
    offer("arrow", (text) => text.split(/\s*(?:[-=]+>|→|⇒|=)\s*/));
  if (share((text) => /\S\s*:\s+\S/.test(text)) >= 0.5) offer("colon", (text) => text.split(/\s*:\s+/));
  const mark = /\s*[·∙•‧▸►▶›»¦│¬⟶➔➜➤⇨~]\s*/;
  if (share((text) => mark.test(text.trim().slice(1))) >= 0.6) offer("mark", (text) => text.split(mark));
  if (share((text) => /\S\s+\/\s+\S/.test(text)) >= 0.6) offer("slash", (text) => text.split(/\s+\/\s+/));
  grids.push(
    ...stacked(lines),
    toGrid("line", lines, (text) => [text]),
  );
  return grids;
}

/** Marks of a list are no part of its rows, where most lines have them; a lone one may be a minus or a footnote. */
function withoutBullets(lines: readonly Line[]): readonly Line[] {
  const bullet = /^\s*(?:[•▪●○◦·‣*]|[-–—](?=\s))\s*(?=\S)/;
  const marked = lines.filter(({ text }) => bullet.test(text) && !isRule(text));
  if (marked.length < 2 || marked.length < lines.length * 0.5) return lines;
  return lines.map(({ line, text }) => ({ line, text: isRule(text) ? text : text.replace(bullet, "") }));
}

function toGrid(kind: string, lines: readonly Line[], split: (text: string) => readonly string[]): Grid {
  const indents = lines.map(({ text }) => indentOf(text)).sort((a, b) => a - b);
  const usual = indents[Math.floor(indents.length / 4)] ?? 0;
  const rows = lines.map(({ line, text }): Row => {
    const cells = isRule(text) || text.length > LONGEST_ROW ? [text.trim()] : split(text).map(cell);
    if (cells.length > MOST_CELLS) cells.splice(0, cells.length, cell(text));
    return { line, source: text, cells, isIndented: indentOf(text) >= usual + 2 };
  });
  return { kind, rows };
}

/** Where commas have blanks behind them, those between figures are of decimals: "schwarz 1,5 mm², Masse". */
function commaThatParts(lines: readonly Line[]): RegExp {
  const text = lines.map((line) => line.text).join("\n");
  const others = text.match(/(?<!\d),|,(?!\d)/g)?.length ?? 0;
  const spaced = text.match(/, |,$/gm)?.length ?? 0;
  return others === 0 || spaced >= others * 0.6 ? /(?<!\d),|,(?!\d)/ : /,/;
}

function indentOf(text: string): number {
  return /^\s*/.exec(text)![0].replaceAll("\t", "    ").length;
}

/** The bars that a table of a plain-text page has at its ends. */
function outerBars(text: string): string {
  const bare = text.trim();
  return bare.startsWith("|") ? bare.slice(1, bare.length > 1 && bare.endsWith("|") ? -1 : undefined) : bare;
}

/** Splits a line at a separator; a cell in quotes may hold it, and doubled quotes. */
function splitQuoted(text: string, separator: string): readonly string[] {
  if (!text.includes('"')) return text.split(separator);
  const cells: string[] = [];
  let at = 0;
  for (;;) {
    const opening = /^[ ]*"/.exec(text.slice(at, at + 8));
    let value = "";
    if (opening) {
      let end = at + opening[0].length;
      const start = end;
      while (end < text.length && (text[end] !== '"' || text[end + 1] === '"'))
        end += text[end] === '"' ? 2 : 1;
      value = text.slice(start, end).replaceAll('""', '"');
      at = Math.min(end + 1, text.length);
    }
    const stop = text.indexOf(separator, at);
    cells.push(value + text.slice(at, stop < 0 ? undefined : stop));
    if (stop < 0) return cells;
    at = stop + separator.length;
  }
}

/** A quoted cell may hold line ends: the lines of such a row become one. */
function joinQuoted(lines: readonly Line[], separator: string): readonly Line[] {
  if (!lines.some(({ text }) => text.includes('"'))) return lines;
  const joined: Line[] = [];
  for (let index = 0; index < lines.length; index++) {
    const first = lines[index]!;
    let text = first.text;
    let last = index;
    while (isOpen(text, separator) && last + 1 < lines.length && last - index < 20)
      text += `\n${lines[++last]!.text}`;
    // A quote that nothing closes is a plain character: "3/8" drain".
    if (last === index || isOpen(text, separator)) joined.push(first);
    else {
      joined.push({ line: first.line, text });
      index = last;
    }
  }
  return joined;
}

function isOpen(text: string, separator: string): boolean {
  let inside = false;
  let fresh = true;
  for (let at = 0; at < text.length; at++) {
    const character = text[at];
    if (inside) {
      if (character !== '"') continue;
      if (text[at + 1] === '"') at++;
      else inside = false;
    } else if (character === '"' && fresh) inside = true;
    else fresh = character === separator || (fresh && character === " ");
  }
  return inside;
}

/**
 * Columns that stand under one another, as in text copied from a page: what is blank in nearly all lines parts them.
 * @returns `null` where there is no such thing
 */
function byGutters(lines: readonly Line[]): Grid | null {
  const table = lines.filter(({ text }) => /\S {2,}\S/.test(text) && !isRule(text) && text.length < 400);
  if (table.length < 3) return null;
  const width = Math.max(...table.map(({ text }) => text.trimEnd().length));
  const ink = new Uint16Array(width + 1);
  const wide = new Uint16Array(width + 1);
  for (const { text } of table) {
    for (let at = 0; at < width; at++) {
      const isBlank = (text[at] ?? " ") === " ";
      if (!isBlank) ink[at]!++;
      else if ((text[at - 1] ?? " ") === " " || (text[at + 1] ?? " ") === " ") wide[at]!++;
    }
  }
  const starts = startsOfRule(lines) ?? startsOfInk(table, ink, wide);
  if (starts.length < 2) return null;
  return toGrid("gutters", lines, (text) => {
    const cuts = starts.slice(1).map((start) => text.lastIndexOf(" ", start) + 1 || start);
    const fits = starts.slice(1).every((start) => start >= text.length || (text[start - 1] ?? " ") === " ");
    if (!/\S {2,}\S/.test(text) && !fits) return [text];
    if (fits) return starts.map((start, index) => text.slice(index === 0 ? 0 : start, starts[index + 1]));
    const pieces = text.trim().split(/\s{2,}/);
    return pieces.length === starts.length ? pieces : cuts.length ? pieces : [text];
  });
}

/** The columns that a line of dashes under the heads draws: "---- ------- -----". */
function startsOfRule(lines: readonly Line[]): readonly number[] | null {
  const rule = lines.find(({ text }) => isRule(text) && /^\s*[-=]{2,}(?:\s+[-=]{2,})+\s*$/.test(text));
  return rule ? [...rule.text.matchAll(/[-=]+/g)].map(({ index }) => index) : null;
}

function startsOfInk(table: readonly Line[], ink: Uint16Array, wide: Uint16Array): readonly number[] {
  const allowed = Math.floor(table.length * 0.04);
  const starts: number[] = [];
  let gap = 2;
  let isInside = false;
  for (let at = 0; at < ink.length; at++) {
    if (ink[at]! <= allowed && wide[at]! >= table.length * 0.3) {
      isInside = false;
      gap++;
    } else if (!isInside && ink[at]! > allowed) {
      // A single blank in the longest cell of a column parts nothing: a column has more cells than one.
      const begun = table.filter(({ text }) => (text[at] ?? " ") !== " ").length;
      if (gap > 1 || begun >= Math.max(2, table.length * 0.2)) starts.push(at);
      isInside = true;
      gap = 0;
    }
  }
  return starts;
}

/** One line that tells several leads: "1=GND, 2=+12V, 3=CAN H", "Battery (red), ground (black), …" become a line each. */
export function unfold(lines: readonly Line[]): readonly Line[] {
  const rows = lines.filter(({ text }) => !isRule(text));
  if (rows.length > 6) return lines;
  return lines.flatMap(({ line, text }) => {
    const parts = text.split(/\s*[;,](?=\s*[A-Za-z]{0,3}\d{1,3}[a-z]?\s*[=:])\s*/);
    const isList =
      parts.length >= 3 && parts.every((part) => /^[^=:]{0,40}?[A-Za-z]{0,3}\d{1,3}[a-z]?\s*[=:]/.test(part));
    if (isList) return parts.map((part) => ({ line, text: part }));
    const closed = text.split(/(?<=\))\s*[,;]\s*(?=\S)/);
    const isClosed =
      closed.length >= 3 && closed.every((part) => /^[^()]{2,60}\([^()]{1,30}\)\.?$/.test(part));
    return (isClosed ? closed : [text]).map((part) => ({ line, text: part }));
  });
}
