import { remembering } from "../remember.ts";
import { fold, squeeze } from "./fold.ts";
import { colourSpanOf, coloursOf, functionReading } from "./words.ts";

/** What stands before a cavity's label in charts: stripped, since the housing does not print it. */
const WORDS =
  "pins?|pen|pennen|cosse|pata|otwor|cav(?:ity|\\.)?|cavities|contacts?|positions?|pos|ways?|kontakte?|kammer|pol|broches?|voies?|alveole|plot|repere|contatt[oi]|pies?|piedino|patilla|posizione|posicion|cavita|cavidad|positie|pool|contactnr|pinnr|styki?|pozycja|stift";
/** These name a terminal of a device as well, by its DIN 72552 number: what follows counts only if all lines do it. */
const DOUBTFUL =
  "terminals?|term|klemme|kl|bornes?|morsetto|klem|zacisk|nr|no|n°|nº|via|wire|lead|cable|fil|ader|draad|leitung|przewod|kabel|cavo|hilo";
const NUMBER_WORD = "(?:\\s*(?:no|nr|n°|nº|num|number|nummer|numero|numer)(?![a-z]))?";
const CODE =
  "[a-z]{1,3}\\d{1,2}:\\d{1,2}(?![\\w.,])|\\d{1,2}\\/[a-z]?\\d{0,2}[a-z]?(?![a-z])|[a-z]{1,4}\\d{1,2}[+-](?![\\w+-])|[a-z]{0,3}\\d{0,2}[-./_]?\\d{1,3}[a-z]?";
const CLOSE = "[°º]?\\s*[)\\]}\"'”“»]?\\s*(?:[.:=]+(?=\\s|$|[^\\w\\s]|[a-z])|(?=[\\s,;|/)–—=\ufdd0-]|$))";

const KEYWORD = new RegExp(
  `(?<![\\w-]|(?<!\\w)(?:for|fur|pour|para|per|voor|dla|of|von|van|di|de|zu)\\s)(${WORDS})\\b\\.?${NUMBER_WORD}[.:#=_\\s-]*((?:${CODE}|[a-z])(?![\\w+]))${CLOSE}`,
);
const KEYWORD_FIRST = new RegExp(
  `^[([{]?\\s*(?:(?:${WORDS}|${DOUBTFUL})\\b\\.?${NUMBER_WORD}[.:#=_\\s-]*|#\\s*)((?:${CODE}|[a-z])(?![\\w+]))${CLOSE}`,
);
const CODE_FIRST = new RegExp(`^[([{"'“„«]?\\s*((?:${CODE})(?![\\w+]))${CLOSE}`);
const CODE_LAST = new RegExp(`(?:^|[\\s,;|:(\\[=>\ufdd0-])((?:${CODE})(?![\\w+]))\\s*[)\\]]?\\s*$`);
const SPACED_FIRST = new RegExp(`^([a-z]\\s\\d{1,2}(?![\\w.,]))${CLOSE}`);
const LETTER_FIRST = new RegExp(`^[([{]?\\s*([a-z](?![\\w+'’/.]\\w))${CLOSE}`);

/** A number with one of these behind it is a quantity: "12 V", "7-way", "18 AWG". */
const UNIT =
  /^[\s-]*(?:v|volts?|a|amps?(?!\s+(?:remote|rem|turn|trigger|enable|control|ctrl|wake|on|switch)(?![a-z]))|ma|w|watts?|mm|mm2|mm²|²|awg|ga|gauge|k?ohms?|k?ω|hz|khz|mhz|kbit|%|x(?=\s?\d)|pins?|poles?|polig|pol|ways?|broches|voies|poli|polos|polige|m|cm|kg|bar|°)(?![\w])/;

/** A label, and what the line says without it. */
export type Labelled = { readonly label: string; readonly rest: string };
/** Finds the label of a line of one chart. */
export type Labeller = (text: string) => Labelled | null;
type Reader = { readonly read: Labeller; readonly needs: number };

function reader(pattern: RegExp, group: number, isFree: boolean): Labeller {
  return (text) => {
    const plain = fold(text);
    const match = pattern.exec(plain);
    const code = match?.[group];
    if (!match || code === undefined) return null;
    const start = match.index + match[0].lastIndexOf(code);
    const end = match.index + match[0].length;
    if (isFree && isQuantity(code, plain.slice(start + code.length))) return null;
    const label = labelCell(text.slice(start, start + code.length));
    const opening = match.index === 0 ? "" : text.slice(0, match.index);
    // A bracket that was opened before the label and closed within it leaves nothing behind.
    return {
      label,
      rest: `${opening.replace(/[([{]\s*$/, "")}${opening === "" ? "" : " "}${text.slice(end)}`.trim(),
    };
  };
}

/** "12 V", "7-way": a figure that counts or measures, and no label. */
export function isQuantity(code: string, after: string): boolean {
  if (/^\d+[vwx]$/.test(code) || /^0[.]\d/.test(code)) return true;
  return /^\d+([.]\d+)?$/.test(code) && UNIT.test(after);
}

const byKeyword = reader(KEYWORD, 2, false);
const READERS: readonly Reader[] = [
  { read: reader(KEYWORD_FIRST, 1, false), needs: 0.5 },
  { read: reader(CODE_FIRST, 1, true), needs: 0.5 },
  { read: reader(SPACED_FIRST, 1, true), needs: 0.6 },
  { read: reader(LETTER_FIRST, 1, true), needs: 0.6 },
  { read: reader(CODE_LAST, 1, true), needs: 0.6 },
];

/**
 * Decides how the lines of a chart carry their labels: what is a label in one line must be one in most, and each
 * must be there once.
 * @returns how to find a line's label; `null` where the chart prints none
 */
export function decideLabels(texts: readonly string[]): Labeller | null {
  const filled = texts.filter((text) => text !== "" && text.length < 300);
  let best: Labeller | null = null;
  let most = 0;
  for (const { read, needs } of READERS) {
    const labels = filled.flatMap((text) => read(text)?.label.toUpperCase() ?? []);
    if (!isLabelSet(labels) || labels.length < needs * filled.length) continue;
    if (labels.length <= most * 1.15) continue;
    best = read;
    most = labels.length;
  }
  const chosen = best ?? marksIn(filled);
  if (!chosen) {
    const named = filled.filter((text) => byKeyword(text)).length;
    return named > 0 && named >= filled.length * 0.3 ? byKeyword : null;
  }
  const others = isTerminalSet(filled.flatMap((text) => chosen(text)?.label ?? [])) ? byLetter : null;
  return (text) => chosen(text) ?? byKeyword(text) ?? others?.(text) ?? null;
}

/** Terminals of DIN 72552 are numbers mostly, and letters some: 49a, L, R, 56. */
function isTerminalSet(labels: readonly string[]): boolean {
  const terminals = labels.filter((label) => /^(?:15|30|31|49|5[0-9]|8[0-9])[a-z]?$/i.test(label));
  return terminals.length >= 2 && terminals.length >= labels.length * 0.6;
}

const byLetter = reader(/^([lrcwbd][+-]?(?![\w+-]))(?=[\s:=|)])\s*[:=|)]?/, 1, true);
const byMark = reader(/^([a-z]{1,4}\d{0,2}[+-]?(?![\w+-]))(?=[\s:=|)])\s*[:=|)]?/, 1, true);

/**
 * Marks that are no numbers: "UP windlass up", "B- battery negative". They are labels where every line has its own,
 * they say nothing themselves, and what follows them says what the lead is for.
 */
function marksIn(texts: readonly string[]): Labeller | null {
  if (texts.length < 3) return null;
  const marked = texts.flatMap((text) => byMark(text) ?? []);
  if (marked.length < texts.length * 0.85) return null;
  const marks = marked.map(({ label }) => label);
  if (new Set(marks.map((mark) => mark.toLowerCase())).size < marks.length) return null;
  const share = (fits: (item: Labelled) => boolean) => marked.filter(fits).length / marked.length;
  if (share(({ label }) => functionReading(label).certain) >= 0.5) return null;
  if (share(({ rest }) => functionReading(rest).candidates.length > 0) < 0.6) return null;
  const coloured = coloursOf(marks).filter(Boolean).length / marks.length;
  if (coloured >= 0.5 && share(({ rest }) => colourSpanOf(rest) !== null) < 0.6) return null;
  return byMark;
}

/** True where texts can be the labels of one housing: each once or nearly so, and no row of fuse ratings. */
export function isLabelSet(labels: readonly string[]): boolean {
  if (labels.length === 0) return false;
  const distinct = new Set(labels);
  if (distinct.size < labels.length * 0.8 && !countsAnew(labels)) return false;
  if (labels.every((label) => /^[A-Z]$/i.test(label))) return isAlphabet(distinct);
  const amperes = labels.filter(isRating).length;
  return amperes < labels.length * 0.6 || distinct.has("1A") || distinct.has("2A");
}

/** "10A", but not "49a" or "56a", which are terminals of DIN 72552 and no fuses. */
function isRating(label: string): boolean {
  return /^\d+(?:[.,]\d+)?M?A$/i.test(label) && !/^(?:49|5[3-9]|8[1-8])A$/i.test(label);
}

/** 1 to 8, and 1 to 8 again: two housings under one another, each counted from the same label on. */
function countsAnew(labels: readonly string[]): boolean {
  const starts = labels.flatMap((label, index) => (label === labels[0] ? [index] : []));
  if (starts.length < 2 || labels.length < starts.length * 3) return false;
  return starts.every((start, at) => {
    const run = labels.slice(start, starts[at + 1]);
    return run.length >= 2 && new Set(run).size === run.length;
  });
}

/** A, B, C, D …: a gap or two, as I and O are left out; single letters elsewhere are colours or sides. */
function isAlphabet(letters: ReadonlySet<string>): boolean {
  const places = [...letters].map((letter) => letter.toUpperCase().charCodeAt(0) - 64);
  return letters.size >= 3 && Math.max(...places) - letters.size <= 1 + letters.size / 8;
}

const WORD_FIRST = new RegExp(
  `^(?:(?:(?:${WORDS})(?![a-z])|(?:${DOUBTFUL})(?![a-z\\d])|(?:nr|no|n[°º]|pin|cav|pos|way)(?![a-z]))\\.?${NUMBER_WORD}[.:#=_\\s-]*|#\\s*)(?=[\\w])`,
);

/** A cell of a label column as the housing prints it: without "pin", brackets, or a closing mark. */
export const labelCell: (text: string) => string = remembering((text) => {
  const bare = squeeze(text).replace(/^["'“„«]+(?=\S)|(?<=\S)["'”“»]+$/g, "");
  if (bare.length > 60) return bare;
  const word = WORD_FIRST.exec(fold(bare));
  const cut = word && word[0].length < bare.length ? bare.slice(word[0].length) : bare;
  const open = /^[([{]\s*([^()[\]{}]+?)\s*[)\]}][.:]?$/.exec(cut)?.[1] ?? cut;
  return open.replace(/\s*[.:)\]]+$/, "") || open;
});

/** True where a cell may be what a housing prints beside a cavity. */
export function looksLikeLabel(text: string): boolean {
  const bare = labelCell(text);
  if (bare.length > 12 || bare === "") return false;
  if (/^[a-z]{0,4}\d{0,3}[-./_:]?\s?\d{1,3}[a-z]{0,2}$/i.test(bare)) return !isQuantity(fold(bare), "");
  return (
    /^[a-z]$/i.test(bare) || /^\d{1,3}[a-z]?\s?\/\s?[a-z0-9]{1,4}$/i.test(bare) || labelRange(bare) !== null
  );
}

/** "5-8", "9…12", "3, 4": the labels that one line speaks of; `null` where it speaks of one. */
export function labelRange(text: string): readonly string[] | null {
  const span =
    /^([a-z]{0,2})(\d{1,3})\s*(?:-|–|—|\.{2,3}|…|to|bis|a|à|t\/m|do)\s*([a-z]{0,2})(\d{1,3})$/i.exec(text);
  if (span) {
    const [, before = "", from, again = "", to] = span;
    const first = Number(from);
    const last = Number(to);
    // "C2-7" is one cavity of the second block.
    if (again !== before || last <= first || last - first > 60) return null;
    return Array.from({ length: last - first + 1 }, (_, index) => `${before}${first + index}`);
  }
  const parts = text.split(/\s*(?:[,+&;]|\bund\b|\band\b|\bet\b)\s*/);
  return parts.length > 1 && parts.every((part) => /^[a-z]{0,2}\d{1,3}$/i.test(part)) ? parts : null;
}
