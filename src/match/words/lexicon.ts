import { distance } from "fastest-levenshtein";
import type { Idea, Words } from "../../catalogue/words/english.ts";
import { LANGUAGES } from "../../catalogue/words/languages.ts";
import { plainWords } from "./plain-words.ts";

/** What a word may stand for: each alternative is a set of ideas. */
export type Alternatives = readonly (readonly Idea[])[];

const words = new Map<string, Idea[][]>();
const stems = new Map<string, Idea[][]>();
/** The most words that one phrase has. */
let longestPhrase = 1;

function add(written: string, ideas: readonly Idea[]): void {
  const plain = plainWords(written);
  const isStem = plain.endsWith("*");
  const word = isStem ? plain.slice(0, -1) : plain;
  if (word === "") return;
  const target = isStem ? stems : words;
  const known = target.get(word);
  const same = known !== undefined && isAmong(ideas, known);
  if (!known) target.set(word, [[...ideas]]);
  else if (!same) known.push([...ideas]);
  longestPhrase = Math.max(longestPhrase, word.split(" ").length);
}

function addLanguage(language: Words): void {
  for (const [idea, list] of Object.entries(language.ideas)) {
    for (const word of list.split(",")) add(word.trim(), [idea as Idea]);
  }
  for (const [phrase, ideas] of Object.entries(language.phrases)) add(phrase, ideas.split(" ") as Idea[]);
}

for (const language of LANGUAGES) addLanguage(language);

/** Stems by their first four letters, longest first. */
const stemIndex = new Map<string, { readonly stem: string; readonly ideas: Alternatives }[]>();
for (const [stem, ideas] of stems) {
  const key = stem.slice(0, 4);
  const list = stemIndex.get(key) ?? [];
  list.push({ stem, ideas });
  stemIndex.set(key, list);
}
for (const list of stemIndex.values()) list.sort((a, b) => b.stem.length - a.stem.length);

export const LONGEST_PHRASE = longestPhrase;

/** A word or phrase as the lexicon has it, in full. */
export function exactly(word: string): Alternatives | null {
  return words.get(word) ?? null;
}

/** A word that begins with a stem, or that is a plural of a known one. */
export function inflected(word: string): Alternatives | null {
  if (word.length < 4) return null;
  const byStem = stemIndex.get(word.slice(0, 4))?.find(({ stem }) => word.startsWith(stem));
  if (byStem) return byStem.ideas;
  for (const ending of ["s", "es", "n", "en", "e", "er"]) {
    if (!word.endsWith(ending) || word.length - ending.length < 3) continue;
    const known = words.get(word.slice(0, -ending.length));
    if (known) return known;
  }
  return null;
}

/** Words that may stand inside a compound; short ones would be found everywhere. */
const SHORT_PARTS = new Set(["fl", "fr", "rl", "rr", "lf", "rf", "lr", "vl", "vr", "hl", "hr", "zv"]);
/** Of three letters only these are found inside compounds: the others make ideas of ordinary words. */
const THREE = new Set([
  "oel",
  "rem",
  "gas",
  "abs",
  "can",
  "usb",
  "gps",
  "led",
  "aux",
  "amp",
  "pto",
  "eck",
  "akk",
  "sub",
  "spk",
  "mic",
  "lin",
  "sig",
  "tel",
  "ant",
  "bat",
  "acc",
  "ign",
  "ill",
  "gnd",
  "pos",
  "neg",
]);
const FUGUES = ["", "s", "n", "en", "es", "e", "-", "/"];

type Piece = { readonly ideas: Alternatives; readonly length: number; readonly known: boolean };

/**
 * A compound as German, Dutch and hasty typists write them: known words in a row, with or without a linking
 * letter. The fewest parts win.
 * @param least the letters that each part must have; words put together of shorter ones are doubtful
 */
export function compound(word: string, least: number): Alternatives | null {
  if (word.length < 5) return null;
  const best: (readonly Piece[] | undefined)[] = new Array(word.length + 1);
  best[0] = [];
  for (let at = 0; at < word.length; at++) {
    const before = best[at];
    if (!before || before.length >= 4) continue;
    for (let end = at + 2; end <= word.length; end++) {
      const piece = word.slice(at, end);
      const ideas = partOfCompound(piece, end === word.length);
      if (!ideas) continue;
      for (const fugue of FUGUES) {
        const next = end + fugue.length;
        if (fugue !== "" && (!word.startsWith(fugue, end) || next >= word.length)) continue;
        const made = [...before, { ideas, length: piece.length, known: THREE.has(piece) }];
        const old = best[next];
        if (!old || old.length > made.length) best[next] = made;
      }
    }
  }
  const parts = best[word.length];
  if (!parts || parts.length < 2 || parts.some((part) => part.length < least)) return null;
  // "dek-verlichting" is one, "sta-nda-rd" is none.
  if (
    parts.some((part) => part.length === 3 && !part.known) &&
    !(parts.length === 2 && parts.some((part) => part.length >= 6))
  )
    return null;
  return product(parts.map((part) => part.ideas));
}

function partOfCompound(piece: string, isLast: boolean): Alternatives | null {
  if (piece.length < 3)
    return SHORT_PARTS.has(piece) || (isLast && /^[12]$/.test(piece)) ? exactly(piece) : null;
  const known = words.get(piece) ?? stems.get(piece);
  if (known) return known;
  return isLast && piece.length >= 5 ? inflected(piece) : null;
}

const MOST_ALTERNATIVES = 6;

/** Every way to take one alternative of each; cut off, for words are rarely ambiguous twice. */
export function product(lists: readonly Alternatives[]): Alternatives {
  let made: (readonly Idea[])[] = [[]];
  for (const list of lists) {
    made = made.flatMap((one) => list.map((other) => [...one, ...other])).slice(0, MOST_ALTERNATIVES);
  }
  return made;
}

/** Known words by length, for spelling. Phrases and short words are left out: a slip in them is another word. */
const spelt = new Map<number, string[]>();
for (const word of words.keys()) {
  if (word.length < 5 || /[^a-z]/.test(word)) continue;
  const list = spelt.get(word.length) ?? [];
  list.push(word);
  spelt.set(word.length, list);
}

/**
 * The known word that a misspelt one is nearest to: one slip, two in a long word, or two letters exchanged.
 * @returns `null` where nothing is near, or where words of different meaning are equally near
 */
export function misspelt(word: string): Alternatives | null {
  if (word.length < 5 || /[^a-z]/.test(word)) return null;
  const allowed = word.length >= 9 ? 2 : 1;
  let nearest = allowed + 1;
  let found: string[] = [];
  for (let length = word.length - allowed; length <= word.length + allowed; length++) {
    for (const known of spelt.get(length) ?? []) {
      // A wrong first letter makes another word more often than a slip.
      const slips = isExchanged(word, known) ? 1 : known[0] === word[0] ? distance(word, known) : 9;
      // In a short word another letter makes another word: "drawn" is no drain.
      if (word.length === 5 && known.length === 5 && slips === 1 && !isExchanged(word, known)) continue;
      if (slips > nearest || slips > allowed) continue;
      if (slips === 2 && word.slice(0, 3) !== known.slice(0, 3)) continue;
      if (slips < nearest) found = [];
      nearest = slips;
      found.push(known);
    }
  }
  const meanings = found.map((known) => words.get(known)!);
  const [first, ...others] = meanings;
  // Nearest words of several languages mean one thing when they share a sense.
  return first && others.every((one) => one.some((sense) => isAmong(sense, first))) ? first : null;
}

function isAmong(sense: readonly Idea[], senses: Alternatives): boolean {
  return senses.some((one) => one.length === sense.length && one.every((idea) => sense.includes(idea)));
}

function isExchanged(word: string, known: string): boolean {
  if (word.length !== known.length) return false;
  const at = [...word].findIndex((letter, index) => letter !== known[index]);
  return (
    at >= 0 &&
    word[at] === known[at + 1] &&
    word[at + 1] === known[at] &&
    word.slice(at + 2) === known.slice(at + 2)
  );
}

/** A word cut short ("illumi", "headl"): five letters or more, most of a word, that only words of one meaning begin with. */
export function cutShort(word: string): Alternatives | null {
  if (word.length < 5 || /[^a-z]/.test(word)) return null;
  let found: Alternatives | null = null;
  for (const [known, ideas] of words) {
    if (known.length <= word.length || !known.startsWith(word) || known.includes(" ")) continue;
    if (word.length < 0.45 * known.length) continue;
    if (found && JSON.stringify(found) !== JSON.stringify(ideas)) return null;
    found = ideas;
  }
  return found;
}
