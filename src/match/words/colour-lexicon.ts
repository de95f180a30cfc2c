import { distance } from "fastest-levenshtein";
import {
  AND_WORDS,
  BASE_WORDS,
  COLOUR_LANGUAGES,
  COLOUR_NOISE,
  COLUMN_SHORT_COLOURS,
  type ColourLanguage,
  type LanguageName,
  type NamedColour,
  NO_MISSPELLINGS,
  ON_WORDS,
  OR_WORDS,
  SHADE_PREFIXES,
  SHADE_WORDS,
  SHADES_AFTER,
  SHORT_COLOURS,
  STRIPE_WORDS,
  WITH_WORDS,
} from "../../catalogue/colour-words.ts";

/** A colour word as it was understood. */
export type ColourWord = {
  /** One colour, or two that were written in one word ("schwarzweiss"). */
  readonly colours: readonly NamedColour[];
  readonly isShade: boolean;
  /** A short form of two or three letters, of which a chart uses one for each colour. */
  readonly isShort: boolean;
  /** Safe beside other words of a line. */
  readonly inLines: boolean;
  /** The one language that has the word; `null` where several do. */
  readonly language: LanguageName | null;
};

/** Lower case, no accents, ß as ss, ł as l: how colour words are compared. */
export function foldWord(text: string): string {
  const lower = text.toLowerCase();
  if (/^[ -~]*$/.test(lower)) return lower;
  return lower
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .replace(/[ßłøæ]/g, (letter) => ({ ß: "ss", ł: "l", ø: "o", æ: "ae" })[letter]!);
}

export const setOf = (words: string): ReadonlySet<string> => new Set(words.split(" "));

export const SHADES = setOf(SHADE_WORDS);
export const TRAILING_SHADES = setOf(SHADES_AFTER);
export const STRIPES = setOf(STRIPE_WORDS);
export const WITHS = setOf(WITH_WORDS);
export const ANDS = setOf(AND_WORDS);
export const ONS = setOf(ON_WORDS);
export const BASES = setOf(BASE_WORDS);
export const ORS = setOf(OR_WORDS);
export const NOISE = setOf(COLOUR_NOISE);
const NOT_MISSPELT = setOf(NO_MISSPELLINGS);
const PREFIXES = SHADE_PREFIXES.split(" ");
/** L and D stand for light and dark before these only: "lgrn". */
const AFTER_LETTER = setOf("grn blu gry brn green blue gray grey brown red");

const FULL = new Map<string, ColourWord>();
const WORDS = new Map<string, ColourWord>();

function build(): void {
  for (const [language, entry] of Object.entries(COLOUR_LANGUAGES) as [LanguageName, ColourLanguage][]) {
    for (const [colour, words] of Object.entries(entry.words) as [NamedColour, string][]) {
      for (const word of words.split(" ").flatMap((stem) => forms(stem, entry.endings))) {
        const known = FULL.get(word);
        if (known && known.colours[0] !== colour) throw new Error(`"${word}" stands for two colours`);
        const only = known && known.language !== language ? null : language;
        FULL.set(word, { colours: [colour], isShade: false, isShort: false, inLines: true, language: only });
      }
    }
  }
  for (const [word, meaning] of FULL) WORDS.set(word, meaning);
  for (const [table, inLines] of [
    [SHORT_COLOURS, true],
    [COLUMN_SHORT_COLOURS, false],
  ] as const) {
    for (const [colour, words] of Object.entries(table) as [NamedColour, string][]) {
      for (const word of words.split(" ")) {
        if (WORDS.has(word)) continue;
        WORDS.set(word, {
          colours: [colour],
          isShade: false,
          isShort: word.length <= 3,
          inLines,
          language: null,
        });
      }
    }
  }
  WORDS.set("gnye", {
    colours: ["GNYE"],
    isShade: false,
    isShort: false,
    inLines: true,
    language: null,
  });
}

function forms(stem: string, endings: string): readonly string[] {
  if (!stem.endsWith("-")) return [stem];
  return endings.split(" ").map((ending) => stem.slice(0, -1) + ending);
}

build();

/** Words that a misspelt one is compared with, by first letter and length. */
const ALIKE = new Map<string, string[]>();
for (const word of FULL.keys()) {
  for (const length of [word.length - 1, word.length, word.length + 1]) {
    const key = word[0]! + length;
    if (word.length >= 4) ALIKE.set(key, [...(ALIKE.get(key) ?? []), word]);
  }
}

const MOST_KEPT = 20_000;
const kept = new Map<string, ColourWord | null>();

/**
 * The colour that a folded word stands for whatever the chart's custom: whole words of seven languages, short words,
 * shades and two colours in one word, one letter misspelt.
 * @returns `null` where the word is none of these, or a misspelling of two colours
 */
export function colourWord(word: string): ColourWord | null {
  const known = WORDS.get(word);
  if (known) return known;
  if (word.length < 4 || word.length > 30) return null;
  const before = kept.get(word);
  if (before !== undefined) return before;
  if (kept.size >= MOST_KEPT) kept.clear();
  const found = SHADES.has(word) || STRIPES.has(word) ? null : (shaded(word) ?? two(word) ?? misspelt(word));
  kept.set(word, found);
  return found;
}

function shaded(word: string): ColourWord | null {
  for (const prefix of PREFIXES) {
    if (!word.startsWith(prefix)) continue;
    const rest = WORDS.get(word.slice(prefix.length)) ?? misspelt(word.slice(prefix.length));
    if (rest) return { ...rest, isShade: true, isShort: false };
  }
  if ((word[0] === "l" || word[0] === "d") && AFTER_LETTER.has(word.slice(1))) {
    return { ...WORDS.get(word.slice(1))!, isShade: true, isShort: false };
  }
  return null;
}

/** "blauweiss", "blkwht": one cut only may give two colours. */
function two(word: string): ColourWord | null {
  let found: ColourWord | null = null;
  for (let cut = 3; cut <= word.length - 3; cut++) {
    const first = WORDS.get(word.slice(0, cut));
    const second = WORDS.get(word.slice(cut));
    if (!first || !second) continue;
    const colours = [...first.colours, ...second.colours];
    if (colours[0] === colours[1]) continue;
    if (found && found.colours.join() !== colours.join()) return null;
    const inLines = first.inLines && second.inLines;
    found = { colours, isShade: false, isShort: false, inLines, language: first.language };
  }
  return found;
}

function misspelt(word: string): ColourWord | null {
  if (word.length < 5 || NOT_MISSPELT.has(word)) return null;
  let found: ColourWord | null = null;
  let inLines = false;
  for (const right of ALIKE.get(word[0]! + word.length) ?? []) {
    const swapped = isSwapped(word, right);
    if (!swapped && distance(word, right) > 1) continue;
    const meaning = FULL.get(right)!;
    // "greey" is a letter from grey and from green.
    if (found && found.colours[0] !== meaning.colours[0]) return null;
    if (right.length < 5) {
      // Four letters are too few to be sure of, but enough to make another reading doubtful.
      found ??= { ...meaning, inLines: false, isShort: true };
      continue;
    }
    inLines ||= meaning.colours[0] !== "none" && (swapped || right.length >= 6);
    found = { ...meaning, inLines };
  }
  return found?.isShort ? null : found;
}

/** The same letters with two neighbours exchanged: "balck". */
function isSwapped(word: string, right: string): boolean {
  if (word.length !== right.length) return false;
  let at = 0;
  while (at < word.length && word[at] === right[at]) at++;
  return (
    at < word.length - 1 &&
    word[at] === right[at + 1] &&
    word[at + 1] === right[at] &&
    word.slice(at + 2) === right.slice(at + 2)
  );
}
