import type { NamedColour } from "../../catalogue/colour-words.ts";
import type { Colour, ColourCode } from "../../graph/harness.ts";
import {
  ANDS,
  BASES,
  type ColourWord,
  colourWord,
  foldWord,
  NOISE,
  ONS,
  ORS,
  SHADES,
  STRIPES,
  WITHS,
} from "./colour-lexicon.ts";

/** A piece of a colour cell: colours that are certain, or letters that the chart's custom decides. */
export type Piece = { readonly word: ColourWord } | { readonly letters: string };

/** A colour cell taken apart. */
export type Cell = {
  readonly pieces: readonly Piece[];
  /** The second colour is the base: "black stripe on yellow". */
  readonly isTracerFirst: boolean;
  /** "green and yellow": green and yellow are then the one code GNYE. */
  readonly hasAnd: boolean;
  /** Something stands in the cell that belongs to no colour. */
  readonly isMixed: boolean;
};

type Token = { readonly word: string; readonly before: string; after: string };

const MOST_CHARACTERS = 200;
const MOST_LETTERS = 6;
const EMPTY: Cell = { pieces: [], isTracerFirst: false, hasAnd: false, isMixed: false };
const MIXED: Cell = { ...EMPTY, isMixed: true };
const NOTHING = /^\s*(?:none|n\s*[/.]\s*[ac]\.?|nc|nil|tbd|unknown|[-–—?.*x]*)\s*$/i;

const MOST_KEPT = 20_000;
const kept = new Map<string, Cell>();

/** Takes a colour cell apart; the same text is read once. */
export function readCell(text: string): Cell {
  const before = kept.get(text);
  if (before) return before;
  if (kept.size >= MOST_KEPT) kept.clear();
  const cell = parenthesis(text) ?? takeApart(text);
  if (text.length <= MOST_CHARACTERS) kept.set(text, cell);
  return cell;
}

/** "SW (schwarz)", "noir (N)": the words explain the letters, or the other way round. */
function parenthesis(text: string): Cell | null {
  const found = text.length <= MOST_CHARACTERS ? /^([^()[\]]+)[([]([^()[\]]+)[)\]]\s*$/.exec(text) : null;
  if (!found) return null;
  const [outside, inside] = [takeApart(found[1]!), takeApart(found[2]!)];
  if (inside.isMixed || outside.isMixed || !inside.pieces.length || !outside.pieces.length) return null;
  if (hasStripe(found[2]!) || inside.pieces.length !== outside.pieces.length) return null;
  if (isCertain(outside) && !isCertain(inside)) return outside;
  if (isCertain(inside) && !isCertain(outside)) return inside;
  return null;
}

function hasStripe(text: string): boolean {
  return foldWord(text)
    .split(/[^a-z]+/)
    .some((word) => STRIPES.has(word));
}

const isCertain = (cell: Cell): boolean => cell.pieces.every((piece) => "word" in piece);

function takeApart(text: string): Cell {
  if (text.length > MOST_CHARACTERS) return MIXED;
  if (NOTHING.test(text)) return EMPTY;
  const tokens = tokensOf(foldWord(text).replace(/\bgreen[- ]and[- ]yellow\b/g, "gnye"));
  const pieces: Piece[] = [];
  let isTracerFirst = false;
  let hasAnd = false;
  let stripeSeen = false;
  let baseSeen = false;
  for (const [index, token] of tokens.entries()) {
    const { word, before } = token;
    const next = tokens[index + 1];
    const meaning = isShadeLetter(token, next) ? null : colourWord(word);
    const last = pieces.at(-1);
    const between = pieces.length > 0 && next !== undefined && /^\s+$/.test(before);
    const fullWords = between && last && "word" in last && isFullWord(next);
    if (isWithSlash(token, between)) continue;
    if (between && ONS.has(word)) isTracerFirst = pieces.length === 1;
    else if (fullWords && ANDS.has(word)) hasAnd = true;
    else if (fullWords && WITHS.has(word)) continue;
    else if (between && ORS.has(word) && /^\s+$/.test(token.after) && hasColourAfter(tokens, index))
      return MIXED;
    else if (STRIPES.has(word)) stripeSeen = true;
    else if (BASES.has(word)) {
      if (pieces.length === 1 && stripeSeen && !baseSeen) isTracerFirst = true;
      baseSeen = true;
    } else if (meaning) pieces.push({ word: meaning });
    else if (SHADES.has(word) || NOISE.has(word) || isShadeLetter(token, next)) continue;
    else if (word.length > 1 && (WITHS.has(word) || (ONS.has(word) && pieces.length === 0)) && next) continue;
    else if (word === "x") continue;
    else if (isLetters(token, next === undefined)) pieces.push({ letters: word });
    else return MIXED;
  }
  return { pieces, isTracerFirst, hasAnd, isMixed: pieces.length === 0 && tokens.length > 0 };
}

function tokensOf(text: string): readonly Token[] {
  const tokens: Token[] = [];
  let from = 0;
  for (const { 0: word, index } of text.matchAll(/\p{L}+/gu)) {
    const before = text.slice(from, index);
    const last = tokens.at(-1);
    if (last) last.after = before;
    from = index + word.length;
    tokens.push({ word, before, after: text.slice(from) });
  }
  return tokens;
}

const isFullWord = (token: Token): boolean =>
  token.word.length >= 3 &&
  (colourWord(token.word) !== null || [SHADES, WITHS, STRIPES].some((words) => words.has(token.word)));

function hasColourAfter(tokens: readonly Token[], index: number): boolean {
  return tokens.slice(index + 1).some(({ word }) => colourWord(word) !== null || word.length <= 3);
}

/** "violet w/ black", "gelb m. schwarz": a w with a space before it and a slash after it is no white. */
function isWithSlash(token: Token, between: boolean): boolean {
  return between && (token.word === "w" || token.word === "m") && /^\s*[/.]/.test(token.after);
}

/** The L of "L. GRN", the D of "D-BLU". */
function isShadeLetter(token: Token, next: Token | undefined): boolean {
  if (token.word !== "l" && token.word !== "d") return false;
  return next !== undefined && next.word.length >= 3 && colourWord(next.word) !== null;
}

/** Letters that may be a code: not "B1" (a cavity) nor "B+" (the battery), but "1.0GY". */
function isLetters({ word, before, after }: Token, isLast: boolean): boolean {
  if (word.length > MOST_LETTERS || !/^[a-z]+$/.test(word)) return false;
  if (/[\d]$/.test(before) && !/\d[.,]\d+$/.test(before)) return false;
  if (/^\d/.test(after) && !/^\d+[.,]\d/.test(after)) return false;
  return !(isLast && word.length === 1 && /^[+−–-]\s*$/.test(after));
}

/**
 * The colour of a cell whose letters have been decided.
 * @param codes the colours in the order written
 * @returns `null` for more than two colours, or one that IEC 60757 has no letters for
 */
export function colourOf(codes: readonly NamedColour[], cell: Cell): Colour | null {
  let order = codes.filter((code, index) => code !== codes[index - 1]);
  const half = order.length / 2;
  // "WH/BK (white/black)": the same colours said twice.
  if (half >= 2 && order.slice(0, half).join() === order.slice(half).join()) order = order.slice(0, half);
  const [first, second] = order;
  if (first === undefined || order.length > 2 || order.includes("none")) return null;
  if (second === undefined) return { base: first as ColourCode, tracer: null };
  if (first === "GNYE" || second === "GNYE") return null;
  if (cell.hasAnd && first === "GN" && second === "YE") return { base: "GNYE", tracer: null };
  const [base, tracer] = (cell.isTracerFirst ? [second, first] : [first, second]) as [ColourCode, ColourCode];
  return { base, tracer };
}
