import type { Idea } from "../../catalogue/words/english.ts";
import { remembering } from "../remember.ts";
import {
  type Alternatives,
  compound,
  cutShort,
  exactly,
  inflected,
  LONGEST_PHRASE,
  misspelt,
  product,
} from "./lexicon.ts";
import { isColourWord, isOrdinary } from "./ordinary.ts";
import { isStopWord, tokensOf } from "./tokens.ts";

/** What a text is made of: sets of ideas that its words may stand for, and words that nobody knows. */
export type TextIdeas = { readonly alternatives: Alternatives; readonly unknown: readonly string[] };

/** One word, by whatever way it is known first: as it is, inflected, compound, misspelt, cut short. */
const wordIdeas: (word: string) => Alternatives | null = remembering(
  (word) => exactly(word) ?? (isColourWord(word) || isOrdinary(word) ? null : guessed(word)),
);

/** A word with signs in it is parted first, or a stem would swallow what stands behind the hyphen. */
function guessed(word: string): Alternatives | null {
  const pieces = /[a-z][/.-][a-z]/.test(word) ? parted(word) : null;
  return (
    pieces ??
    inflected(word) ??
    compound(word, 4) ??
    parted(word) ??
    misspelt(word) ??
    compound(word, 2) ??
    cutShort(word)
  );
}

/** "lf-", "spk+", "front/left", "8-way": a word with signs in it, read piece by piece. */
function parted(word: string): Alternatives | null {
  if (!/[^a-z0-9]/.test(word) && !/[a-z]\d|\d[a-z]/.test(word)) return null;
  const pieces = word
    .replace(/([+-])$/, " $1")
    .replace(/^([+])/, "$1 ")
    .replace(/[/.+-](?=.)/g, " ")
    .replace(/([a-z])(\d)/g, "$1 $2")
    .replace(/(\d)([a-z])/g, "$1 $2")
    .split(" ")
    .filter((piece) => piece !== "" && piece !== ".");
  if (pieces.length < 2) return pieces[0] !== undefined && pieces[0] !== word ? wordIdeas(pieces[0]) : null;
  const read = readTokens(pieces);
  return read.unknown.length < pieces.length / 2 + 0.5 && read.alternatives[0]?.length
    ? read.alternatives
    : null;
}

function readTokens(tokens: readonly string[]): TextIdeas {
  const lists: Alternatives[] = [];
  const unknown: string[] = [];
  for (const piece of phrases(phrases(tokens).filter((one) => typeof one !== "string" || !isStopWord(one)))) {
    const ideas = typeof piece === "string" ? wordIdeas(piece) : piece;
    if (ideas) lists.push(ideas);
    else if (!isColourWord(piece as string)) unknown.push(piece as string);
  }
  return { alternatives: product(lists), unknown };
}

/** Words that are a phrase together are taken as one, the longest first. */
function phrases(tokens: readonly (string | Alternatives)[]): readonly (string | Alternatives)[] {
  const made: (string | Alternatives)[] = [];
  for (let at = 0; at < tokens.length; ) {
    let taken = 1;
    let piece = tokens[at]!;
    for (let count = Math.min(LONGEST_PHRASE, tokens.length - at); count > 1; count--) {
      const words = tokens.slice(at, at + count);
      const found = words.every((word) => typeof word === "string") ? exactly(words.join(" ")) : null;
      if (!found) continue;
      piece = found;
      taken = count;
      break;
    }
    made.push(piece);
    at += taken;
  }
  return made;
}

/** The ideas of a chart's text, whatever its language and word order. */
export function ideasOf(text: string): TextIdeas {
  return readTokens(tokensOf(text));
}

export type { Idea };
