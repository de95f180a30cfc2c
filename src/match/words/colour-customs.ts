import {
  COLOUR_CUSTOMS,
  type ColourCustom,
  IEC_LETTERS,
  PAIR_TOO_LETTERS,
  WEAK_LETTERS,
} from "../../catalogue/colour-letters.ts";
import type { LanguageName, NamedColour } from "../../catalogue/colour-words.ts";
import { setOf } from "./colour-lexicon.ts";

/** What a code of letters may be within one custom. */
type Meaning = { readonly colours: readonly NamedColour[]; readonly isShade: boolean };

type Custom = {
  readonly name: string;
  readonly language: LanguageName | null;
  readonly codes: ReadonlyMap<string, Meaning>;
  /** What letters were taken apart into before. */
  readonly parts: Map<string, readonly string[] | null>;
};

/** How a chart's letters were decided. */
export type Decision = {
  /** The colours of each code that could be decided, in the order written. */
  readonly read: ReadonlyMap<string, readonly NamedColour[]>;
  /** Codes that could be two colours. */
  readonly doubtful: ReadonlySet<string>;
  /** The custom that the chart was read by; `null` where none stood out. */
  readonly custom: string | null;
};

/** What speaks for a custom, in codes read. A chart of few leads is decided by half a code. */
const JOINED_WEIGHT = 0.6;
const LANGUAGE_WEIGHT = 0.5;
const MARGIN = 0.35;
/** More distinct codes than this are no chart of colours: only those of IEC 60757 are read. */
const MOST_CODES = 400;
const MOST_KEPT = 20_000;

const CUSTOMS: readonly Custom[] = COLOUR_CUSTOMS.map(customOf);
const IEC = CUSTOMS[0]!;
const IEC_CODES = new Map(Object.entries(IEC_LETTERS).map(([colour, code]) => [code, colour as NamedColour]));
const WEAK = setOf(WEAK_LETTERS);
const PAIR_TOO = setOf(PAIR_TOO_LETTERS);

function customOf({ name, language, letters }: ColourCustom): Custom {
  const codes = new Map<string, Meaning>();
  for (const [colour, list] of Object.entries(letters) as [NamedColour, string][]) {
    for (const entry of list.split(" ")) {
      const code = entry.replace("~", "");
      const colours = [...(codes.get(code)?.colours ?? []), colour];
      codes.set(code, { colours, isShade: entry.endsWith("~") });
    }
  }
  return { name, language, codes, parts: new Map() };
}

/** Codes that are one colour in one custom and another in another. */
const DISPUTED = new Set<string>();
{
  const seen = new Map<string, string>();
  for (const { codes } of CUSTOMS) {
    for (const [code, { colours }] of codes) {
      const text = colours.join();
      if (colours.length > 1 || (seen.get(code) ?? text) !== text) DISPUTED.add(code);
      seen.set(code, text);
    }
  }
}

/** The codes that letters are made of: one, or two written together ("swge"). `null` where they are none, or unclear. */
function partsOf(letters: string, custom: Custom): readonly string[] | null {
  const before = custom.parts.get(letters);
  if (before !== undefined) return before;
  if (custom.parts.size >= MOST_KEPT) custom.parts.clear();
  const parts = cut(letters, custom);
  custom.parts.set(letters, parts);
  return parts;
}

function cut(letters: string, custom: Custom): readonly string[] | null {
  if (custom.codes.has(letters)) return [letters];
  let found: readonly string[] | null = null;
  for (let at = 1; at < letters.length; at++) {
    const parts = [letters.slice(0, at), letters.slice(at)];
    if (!parts.every((part) => custom.codes.has(part)) || parts[0] === parts[1]) continue;
    if (found) return null;
    found = parts;
  }
  return found;
}

const keptCodes = new Map<string, boolean>();

/** True where some custom could read the letters. */
export function isCode(letters: string): boolean {
  const before = keptCodes.get(letters);
  if (before !== undefined) return before;
  if (keptCodes.size >= MOST_KEPT) keptCodes.clear();
  const found = CUSTOMS.some((custom) => partsOf(letters, custom) !== null);
  keptCodes.set(letters, found);
  return found;
}

type Reading = {
  readonly custom: Custom;
  readonly score: number;
  /** `null` where the letters are readable but not decided. */
  readonly read: ReadonlyMap<string, readonly NamedColour[] | null>;
};

/**
 * Decides the letters of one chart together: each distinct code counts once, for the customs that can read it and
 * against those that cannot; two codes for one colour speak against a custom as well.
 * @param letters the distinct codes of the chart, in lower case
 * @param shortColours colours that the chart writes in a short form of its own ("blk"): no other code means them
 * @param languages the languages of the chart's colour words
 */
export function decideLetters(
  letters: ReadonlySet<string>,
  shortColours: ReadonlySet<NamedColour>,
  languages: ReadonlySet<LanguageName>,
): Decision {
  const readings = (letters.size > MOST_CODES ? [] : CUSTOMS).map((custom) =>
    readBy(custom, letters, shortColours, languages),
  );
  const most = Math.max(0, ...readings.map(({ score }) => score));
  const best = most > 0 ? readings.filter(({ score }) => score > most - MARGIN) : [];
  const read = new Map<string, readonly NamedColour[]>();
  const doubtful = new Set<string>();
  for (const code of letters) {
    const ways = best.filter((reading) => reading.read.has(code)).map((reading) => reading.read.get(code)!);
    const settled = ways.length > 0 ? agreed(ways) : readAlone(code, letters.size > MOST_CODES);
    if (settled) read.set(code, settled);
    else if (!WEAK.has(code) && isCode(code)) doubtful.add(code);
  }
  const customs = best.map(({ custom }) => custom);
  const isOne = customs.length === 1 || (customs[0] === IEC && doubtful.size === 0);
  return { read, doubtful, custom: isOne ? (customs[0]?.name ?? null) : null };
}

function agreed(ways: readonly (readonly NamedColour[] | null)[]): readonly NamedColour[] | null {
  const [first] = ways;
  return first && ways.every((way) => way?.join() === first.join()) ? first : null;
}

/** A code that stands apart from the chart's custom: an IEC code, or one that several customs read alike. */
function readAlone(code: string, isCrowded: boolean): readonly NamedColour[] | null {
  const iec = IEC_CODES.get(code);
  if (iec) return [iec];
  if (isCrowded || WEAK.has(code)) return null;
  const ways = everyWay([code]);
  return ways.length >= 2 ? agreed(ways) : null;
}

function readBy(
  custom: Custom,
  letters: ReadonlySet<string>,
  shortColours: ReadonlySet<NamedColour>,
  languages: ReadonlySet<LanguageName>,
): Reading {
  const parts = new Map<string, readonly string[]>();
  let score = custom.language && languages.has(custom.language) ? LANGUAGE_WEIGHT : 0;
  for (const code of letters) {
    if (!isCode(code)) continue;
    const found = partsOf(code, custom);
    if (found) parts.set(code, found);
    const isWeak = WEAK.has(code) || (found?.length === 2 && IEC_CODES.has(code));
    if (!isWeak) score += found ? (found.length === 1 ? 1 : JOINED_WEIGHT) : -1;
  }
  if (parts.size === 0) return { custom, score: 0, read: new Map() };
  const { settled, clashes } = settle(new Set([...parts.values()].flat()), custom, shortColours);
  const read = new Map<string, readonly NamedColour[] | null>();
  for (const [code, list] of parts) {
    const colours = list.map((part) => settled.get(part) ?? null);
    read.set(code, colours.every((colour) => colour !== null) ? colours : null);
  }
  return { custom, score: score - clashes, read };
}

/** Decides the single codes of one custom; those with two meanings by what the chart calls its other colours. */
function settle(
  used: ReadonlySet<string>,
  custom: Custom,
  shortColours: ReadonlySet<NamedColour>,
): { readonly settled: ReadonlyMap<string, NamedColour>; readonly clashes: number } {
  const settled = new Map<string, NamedColour>();
  const byColour = new Map<NamedColour, string[]>();
  for (const code of used) {
    const { colours, isShade } = custom.codes.get(code)!;
    const [only] = colours;
    if (colours.length > 1 || only === undefined) continue;
    settled.set(code, only);
    if (!isShade && only !== "none") byColour.set(only, [...(byColour.get(only) ?? []), code]);
  }
  for (const code of used) {
    const { colours } = custom.codes.get(code)!;
    if (colours.length < 2) continue;
    const free = colours.filter((colour) => !byColour.has(colour) && !shortColours.has(colour));
    if (free.length === 1) settled.set(code, free[0]!);
  }
  let clashes = 0;
  for (const [colour, codes] of byColour) {
    const many = codes.length + (shortColours.has(colour) ? 1 : 0);
    if (many < 2) continue;
    clashes += many - 1;
    // A chart has one code for one colour: of two, the disputed one is likely to be another colour.
    for (const code of codes) if (DISPUTED.has(code)) settled.delete(code);
  }
  return { settled, clashes };
}

/** The colours of letters that stand alone, where every custom that reads all of them reads them alike. */
export function lettersAlone(codes: readonly string[]): readonly NamedColour[] | null {
  if (codes.every((code) => IEC_CODES.has(code))) return codes.map((code) => IEC_CODES.get(code)!);
  const iec = codes.map((code) => partsOf(code, IEC));
  if (iec.every((parts) => parts !== null)) return iec.flat().map((part) => IEC_CODES.get(part!)!);
  if (codes.every((code) => WEAK.has(code))) return null;
  if (codes.length === 1 && PAIR_TOO.has(codes[0]!)) return null;
  const ways = everyWay(codes);
  // One letter is little: three customs have to share it.
  const enough = codes.length === 1 && codes[0]!.length === 1 ? 3 : 1;
  return ways.length >= enough ? agreed(ways) : null;
}

/**
 * What each custom that reads all of the codes reads. IEC codes are read beside any; two codes written together only
 * where no custom has them as one.
 */
function everyWay(codes: readonly string[]): readonly (readonly NamedColour[] | null)[] {
  const isSingle = codes.map((code) => CUSTOMS.some((custom) => custom.codes.has(code)));
  return CUSTOMS.flatMap((custom) => {
    const ways: NamedColour[] = [];
    let isDecided = true;
    let own = 0;
    for (const [index, code] of codes.entries()) {
      const parts = isSingle[index] ? [code] : partsOf(code, custom);
      for (const part of parts ?? [""]) {
        const meaning = custom.codes.get(part)?.colours;
        const colour = meaning ? meaning[0] : IEC_CODES.get(part);
        if (!colour) return [];
        if (meaning) own++;
        if (meaning && meaning.length > 1) isDecided = false;
        ways.push(colour);
      }
    }
    return own === 0 ? [] : [isDecided ? ways : null];
  });
}
