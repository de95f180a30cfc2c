import { isDirectionCell } from "./direction.ts";
import { fold } from "./fold.ts";
import { isLabelSet, isQuantity, looksLikeLabel } from "./label.ts";
import { isHeading, isProse } from "./notes.ts";
import { type Grid, isRule, type Row } from "./split.ts";
import { coloursOf, functionReading } from "./words.ts";

/** What charts write before a number that they print beside a lead or a cavity, without accents (common practice, no source). */
const KNOWN = new Set(
  (
    "pin pins pen cavity cav contact contacts position pos way slot socket stud core conductor strand flag tag lead wire cable " +
    "terminal term post bolt screw tab blade ferrule crimp point kontakt kammer pol ader draht litze leitung kabel klemme stift " +
    "buchse platz schraube broche voie borne alveole plot fil conducteur cosse repere vis pie patilla hilo cable borne via " +
    "terminal pata tornillo contatto pin piedino cavo filo morsetto spina vite polo posizione kontakt draad ader pool klem " +
    "stekker positie styk zyla przewod zacisk kabel pozycja nr no n n° nº № # num number nummer numero numer"
  ).split(" "),
);
/** These are printed on housings with their number, or tell what the lead does. */
const KEPT =
  /^(?:in|out|on|off|ch|fuse|relay|switch|sensor|zone|row|line|page|table|rev|and|or|to|from|for)$/;
const NUMBER_WORD = "(?:(?:number|nummer|numero|numer|num|no|nr|n)(?![a-z])[.:#=_\\s°º-]*)?";
const CODE = "([a-z]{0,2}\\d{1,3}[a-z]?|[a-z])(?![\\w+]|[.,/]\\d)";
const FIRST = new RegExp(`^([\\s([{"'*]*)(n[°º]|№|#|[a-z]{1,14})([.:#=_\\s°º-]*)${NUMBER_WORD}${CODE}`);
const LAST = new RegExp(
  `(?<=[\\s,;|(\\[–—:-])(n[°º]|№|#|[a-z]{1,14})([.:#=_\\s°º-]+)${NUMBER_WORD}${CODE}(?=[)\\]]?\\s*$)`,
);
/** Of the rows, so many have to begin with the word. */
const LEAST_SHARE = 0.6;

type Worded = { readonly word: string; readonly label: string; readonly text: string; readonly rest: string };

/**
 * The rows without the word that stands before the label of most: "stud A", "Core 1", "fil n°1" become "A", "1" and
 * "1", in whatever language. Words that are a colour, say a function or are printed with their number ("IN 1") stay.
 */
export function withoutRowWord(grid: Grid): Grid {
  // "Plug 1" may be a heading, or the word and the label of a row.
  const rows = grid.rows.filter(
    (row) =>
      !isRule(row.source) && (!isHeading(row.source) || row.cells.some((cell) => wordedAt(cell, true))),
  );
  const width = Math.min(8, Math.max(0, ...rows.map(({ cells }) => cells.length)));
  const columns = Array.from({ length: width }, (_, at) =>
    rows.flatMap(({ cells }) => (cells[at] && !isProse(cells[at]) ? [cells[at]] : [])),
  );
  if (columns.some((cells) => cells.length > 2 && cells.every(isBareLabel) && isLabelSet(cells))) return grid;
  let best: { at: number; word: string; isFirst: boolean; rank: number } | null = null;
  for (const [at, cells] of columns.entries()) {
    for (const isFirst of width === 1 ? [true, false] : [true]) {
      const word = commonWord(cells, isFirst, rows, at);
      const rank = word === null ? 0 : KNOWN.has(word) ? 2 : 1;
      if (word !== null && rank > (best?.rank ?? 0)) best = { at, word, isFirst, rank };
    }
  }
  if (best === null) return grid;
  const { at, word, isFirst } = best;
  return { ...grid, rows: grid.rows.map((row) => without(row, at, word, isFirst)) };
}

function without(row: Row, at: number, word: string, isFirst: boolean): Row {
  const found = wordedAt(row.cells[at] ?? "", isFirst);
  if (found?.word !== word) return row;
  return { ...row, cells: row.cells.map((cell, index) => (index === at ? found.text : cell)) };
}

function isBareLabel(cell: string): boolean {
  return looksLikeLabel(cell) && !/[a-z]{2,}[.\s°]/i.test(cell);
}

function commonWord(
  cells: readonly string[],
  isFirst: boolean,
  rows: readonly Row[],
  at: number,
): string | null {
  if (cells.length < 2) return null;
  const found = cells.flatMap((cell) => wordedAt(cell, isFirst) ?? []);
  if (found.length < cells.length * LEAST_SHARE) return null;
  const counts = new Map<string, number>();
  for (const { word } of found) counts.set(word, (counts.get(word) ?? 0) + 1);
  const [word, count] = [...counts].reduce((one, other) => (other[1] > one[1] ? other : one));
  if (count < Math.max(2, cells.length * LEAST_SHARE)) return null;
  const labels = found.flatMap((item) => (item.word === word ? [item.label.toUpperCase()] : []));
  if (!isLabelSet(labels)) return null;
  if (/^(?:kl|klemme|terminal|term|borne|klem|morsetto)$/.test(word) && areMostlyTerminals(labels))
    return null;
  if (KNOWN.has(word)) return word;
  if (count < 3 || KEPT.test(word) || isDirectionCell(word) || coloursOf([word])[0]) return null;
  if (functionReading(`${word} 1`).candidates.length > 0 || functionReading(word).candidates.length > 0)
    return null;
  // What is left has to tell what the leads are for, or the word was part of it.
  const told = rows.filter(({ cells: all }) => {
    const item = wordedAt(all[at] ?? "", isFirst);
    if (item?.word !== word) return false;
    const rest = [item.rest, ...all.filter((cell, index) => index !== at && cell !== "")];
    return rest.some((words) => functionReading(words).candidates.length > 0);
  });
  return told.length >= count * LEAST_SHARE ? word : null;
}

function areMostlyTerminals(labels: readonly string[]): boolean {
  return (
    labels.filter((label) => /^(?:15|30|31|49|5[0-9]|8[0-9])[A-Z]?$/.test(label)).length >=
    labels.length * 0.5
  );
}

function wordedAt(cell: string, isFirst: boolean): Worded | null {
  if (cell.length > 300) return null;
  const plain = fold(cell);
  const match = (isFirst ? FIRST : LAST).exec(plain);
  if (!match) return null;
  const [before, word, gap, code] = isFirst
    ? [match[1]!, match[2]!, match[3]!, match[4]!]
    : ["", match[1]!, match[2]!, match[3]!];
  // Glued to its figure it is a name that housings print: "K30".
  if (gap === "" && /[a-z]$/.test(word)) return null;
  if (word === "n" && gap.trim() === "") return null;
  const end = match.index + match[0].length;
  if (isQuantity(code, plain.slice(end))) return null;
  const start = match.index + before.length;
  const label = cell.slice(end - code.length, end);
  return {
    word,
    label,
    text: `${cell.slice(0, start)}${label}${cell.slice(end)}`,
    rest: `${cell.slice(0, start)} ${cell.slice(end)}`.trim(),
  };
}
