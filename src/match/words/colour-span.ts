import {
  COLOUR_COLLISIONS,
  LAMP_WORDS,
  LINE_LETTERS,
  NO_COLOUR_PAIRS,
  PAIR_LETTERS,
  SHINING_PARTS,
  SHINING_WORDS,
} from "../../catalogue/colour-letters.ts";
import type { Colour } from "../../graph/harness.ts";
import { readColourText } from "./colour-alone.ts";
import { isCode } from "./colour-customs.ts";
import {
  ANDS,
  colourWord,
  foldWord,
  ONS,
  SHADES,
  STRIPES,
  setOf,
  TRAILING_SHADES,
  WITHS,
} from "./colour-lexicon.ts";

/** Where in a line a colour stands. */
export type ColourSpan = { readonly start: number; readonly end: number; readonly colour: Colour };

type Kind = "colour" | "code" | "shade" | "stripe" | "joiner" | "other";
type Word = {
  readonly text: string;
  readonly start: number;
  readonly end: number;
  readonly kind: Kind;
  /** What stands between this word and the one before. */
  readonly gap: string;
};
type Run = {
  readonly first: number;
  readonly last: number;
  readonly colour: Colour;
  readonly weight: number;
};

const CODES = setOf(LINE_LETTERS);
const NO_PAIRS = setOf(NO_COLOUR_PAIRS);
const PAIRED = setOf(PAIR_LETTERS);
const SHINING = setOf(SHINING_WORDS);
const PARTS = setOf(SHINING_PARTS);
const LAMPS = setOf(LAMP_WORDS);
const MOST_CHARACTERS = 2000;
/** Between the words of one colour: a space, or one mark with or without spaces. */
const TIGHT = /^ ?[/\\–—‐‑.&+-]? ?$/;
/** "yellow, black stripe". */
const COMMA = /^, ?$/;
const PAIR = /^ ?[/–‐‑-] ?$/;

const MOST_KEPT = 20_000;
const kept = new Map<string, ColourSpan | null>();

/**
 * Finds the colour inside a longer line: the longest run of colour words or safe letters, the first of equals.
 * Letters count alone only as IEC 60757 codes that stand apart, and in pairs that every custom reads alike ("W-B").
 * @param text one line; what stands behind 2 000 characters is not looked at
 * @returns where it starts and ends, as string offsets, and the colour; `null` where there is none
 */
export function colourSpan(text: string): ColourSpan | null {
  const before = kept.get(text);
  if (before !== undefined) return before;
  if (kept.size >= MOST_KEPT) kept.clear();
  const found = findSpan(text.slice(0, MOST_CHARACTERS));
  if (text.length <= MOST_CHARACTERS) kept.set(text, found);
  return found;
}

function findSpan(text: string): ColourSpan | null {
  const words = wordsOf(text);
  let best: Run | null = null;
  for (let at = 0; at < words.length; at++) {
    const run = letterPair(words, at, text) ?? sizedCode(words, at, text) ?? wordRun(words, at, text);
    if (!run) continue;
    if (!best || run.weight > best.weight) best = run;
    at = run.last;
  }
  if (!best) return null;
  return { start: words[best.first]!.start, end: words[best.last]!.end, colour: best.colour };
}

function wordsOf(text: string): readonly Word[] {
  const words: Word[] = [];
  let from = 0;
  for (const { 0: written, index } of text.matchAll(/[\p{L}\p{M}\p{N}_]+/gu)) {
    const word = foldWord(written);
    const gap = text.slice(from, index);
    from = index + written.length;
    words.push({ text: word, start: index, end: from, kind: kindOf(word), gap });
  }
  return words;
}

function kindOf(word: string): Kind {
  if (STRIPES.has(word)) return "stripe";
  if (SHADES.has(word)) return "shade";
  if (CODES.has(word) || isCodePair(word)) return "code";
  if (/\d/.test(word)) return "other";
  const meaning = colourWord(word);
  if (meaning?.inLines && !meaning.colours.includes("none")) return "colour";
  if (WITHS.has(word) || ANDS.has(word) || ONS.has(word)) return "joiner";
  return "other";
}

/** "WHBK": two IEC codes in one word. */
const isCodePair = (word: string): boolean =>
  word.length === 4 &&
  CODES.has(word.slice(0, 2)) &&
  CODES.has(word.slice(2)) &&
  word.slice(0, 2) !== word.slice(2);

/** A run of words from `at` on: shades and colours, what joins them, and stripe words. */
function wordRun(words: readonly Word[], at: number, text: string): Run | null {
  if (!startsRun(words, at)) return null;
  let colours = 0;
  let reach = at;
  for (let index = at; index < words.length; index++) {
    const word = words[index]!;
    if (index > at && !joins(words, index)) break;
    if (word.kind === "other") break;
    if (word.kind === "colour" || word.kind === "code") {
      if (colours === 2) break;
      colours += colourWord(word.text)?.colours.length ?? (word.text.length === 4 ? 2 : 1);
      reach = index;
    } else if (word.kind === "stripe" && colours > 0) reach = index;
    else if (word.kind === "shade" && TRAILING_SHADES.has(word.text) && colours > 0) reach = index;
    if (colours > 2) return null;
  }
  if (colours === 0) return null;
  // What cannot be read as one colour may still begin with one.
  for (let end = reach; end >= at; end--) {
    const kind = words[end]!.kind;
    if (kind === "joiner" || (kind === "shade" && !TRAILING_SHADES.has(words[end]!.text))) continue;
    const colour = readColourText(text.slice(words[at]!.start, words[end]!.end));
    if (!colour || !isMeant(words, at, end)) continue;
    const isWord = words.slice(at, end + 1).some((word) => word.kind === "colour");
    return { first: at, last: end, colour, weight: (colour.tracer ? 2 : 1) + (isWord ? 0.5 : 0) };
  }
  return null;
}

function startsRun(words: readonly Word[], at: number): boolean {
  const { kind, text, gap } = words[at]!;
  if (kind === "colour" || kind === "code") return true;
  if (kind !== "shade" || TRAILING_SHADES.has(text)) return false;
  const next = words[at + 1];
  if (!next || (next.kind !== "colour" && next.kind !== "code") || !TIGHT.test(next.gap)) return false;
  const before = words[at - 1];
  return !(before && gap === " " && text === "light" && LAMPS.has(before.text));
}

/** True where the word goes on with the colour before it: "violet w/ black", "yellow, black stripe". */
function joins(words: readonly Word[], index: number): boolean {
  const { gap } = words[index]!;
  if (TIGHT.test(gap)) return true;
  return COMMA.test(gap) && words.slice(index + 1, index + 3).some((word) => word.kind === "stripe");
}

/** A pair of letters that no custom reads otherwise: "W-B", "GN/YE", "sw/ge". */
function letterPair(words: readonly Word[], at: number, text: string): Run | null {
  const [first, second] = [words[at]!, words[at + 1]];
  if (!second || first.text.length > 2 || second.text.length > 2) return null;
  if (!/^[a-z]+$/.test(first.text + second.text) || !PAIR.test(second.gap)) return null;
  if (first.kind === "shade" || second.kind === "shade") return null;
  if (second.gap.includes(" ") && first.text.length + second.text.length < 4) return null;
  if ([first, second].some(({ text: code }) => code.length === 1 && !PAIRED.has(code))) return null;
  if (NO_PAIRS.has(`${first.text}/${second.text}`)) return null;
  if (/[/\-–]$/.test(first.gap) || /^[/\-–+]\S/.test(text.slice(second.end))) return null;
  const colour = readColourText(text.slice(first.start, second.end));
  if (!colour?.tracer) return null;
  return { first: at, last: at + 1, colour, weight: 2 };
}

/** Letters between a label and a size: "Kl. 30 rt 2,5". */
function sizedCode(words: readonly Word[], at: number, text: string): Run | null {
  const { start, end, text: letters, gap } = words[at]!;
  if (letters.length < 2 || letters.length > 5 || !/^\s+\d+[.,]\d/.test(text.slice(end, end + 9)))
    return null;
  const before = words[at - 1];
  if (before && gap === " " && !isLabel(before.text)) return null;
  const colour = readColourText(text.slice(start, end));
  return colour && { first: at, last: at, colour, weight: 1 };
}

/** False for words that look like a colour and are none, by what stands beside them. */
function isMeant(words: readonly Word[], first: number, last: number): boolean {
  const before = words[first - 1];
  const after = words[last + 1];
  const isNear = (word: Word | undefined, gap: string | undefined): word is Word =>
    word !== undefined && gap === " ";
  const { text, kind, gap } = words[first]!;
  const left = isNear(before, gap) ? before.text : "";
  const right = after && isNear(after, after.gap) ? after.text : "";
  if (first === last) {
    const collision = COLOUR_COLLISIONS[text];
    if (collision?.before?.split(" ").includes(left) || collision?.after?.split(" ").includes(right))
      return false;
    if (kind === "code" && !standsApart(words, first)) return false;
  }
  if (isTied(before, gap) || isTied(after, after?.gap ?? "")) return false;
  if (PARTS.has(right)) return false;
  if (SHINING.has(right) && kind === "colour") {
    const isLast = words[last + 2] === undefined || !TIGHT.test(words[last + 2]!.gap);
    if (isLast || (left !== "" && !isLabel(left))) return false;
  }
  return true;
}

/** Tied by a mark to letters that may be the other colour, or to one without letters: "TAN/BLK" is no black lead. */
function isTied(word: Word | undefined, gap: string): boolean {
  if (!word || !/^[/\\–-]$/.test(gap)) return false;
  // "A-yellow": a label.
  if (word.text.length === 1 && !/^[/\\]$/.test(gap)) return false;
  return isCode(word.text) || colourWord(word.text) !== null;
}

/** A code is set off by an end of the line, a mark, a label before it or a number behind it. */
function standsApart(words: readonly Word[], at: number): boolean {
  const { gap, text } = words[at]!;
  const before = words[at - 1];
  const after = words[at + 1];
  if (text.length === 4) return true;
  if (/[-+]$/.test(gap) && !/\s[-+]$/.test(gap) && before) return false;
  if (!before || gap !== " " || isLabel(before.text)) return true;
  return after?.gap !== " " || /^\d/.test(after.text);
}

const isLabel = (word: string): boolean => /\d/.test(word) || word.length === 1;
