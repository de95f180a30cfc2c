import { plainWords } from "./plain-words.ts";

/** Words that say nothing of what a lead is for, in the languages of charts. */
const STOP = new Set(
  (
    "the of for and or with from to at on by as is it its this that see via per when only all any also well etc " +
    "der die das des dem den ein eine und oder mit von vom zum zur zu bei am im an auf aus fur fuer uber ueber " +
    "le la les du de des et ou a au avec pour sur par en dans un une " +
    "el los las del y o con para por al un una unos su " +
    "il gli della dello dei delle degli e ed di da per nel alla allo dal dalla " +
    "het een en of van met naar op bij te uit " +
    "i z ze do na w we od dla po oraz lub pod nad przy " +
    "approx ca max typ nom nominal"
  ).split(" "),
);

/** A voltage as charts write it: "12 V", "+12V", "12V DC", "24 Volt". */
const VOLTS =
  /[+]?\s?\b(?:\d{1,2}\s?[-/]\s?)?(6|12|13[.,]8|14[.,]4|24|28|48)\s?(?:v|volts?|volt)\b(?:\s?dc)?(?=[^a-z]|$)/g;
const FIVE_VOLTS = /[+]?\s?\b5\s?v(?:olts?)?\b/g;
const ZERO_VOLTS = /\b0\s?v(?:olts?)?\b/g;

/**
 * The words of a chart's text in their plain form. Signs that stand for a polarity become words of their own;
 * what a lexicon knows with its sign ("b+", "can-h") is tried by the caller before the sign is parted.
 * @returns tokens, stop words among them: a phrase may hold some
 */
export function tokensOf(text: string): readonly string[] {
  const plain = plainWords(text)
    .replace(/&amp;|&/g, " ")
    .replace(ZERO_VOLTS, " 0v ")
    .replace(FIVE_VOLTS, " 5v ")
    .replace(VOLTS, " 12v ")
    // "FR-L": a code and its side; "(-)", "+ve".
    .replace(/\(\s*([+-])\s*\)/g, " $1 ")
    .replace(/([+-])\s?ve\b/g, " $1 ")
    .replace(/\b[ldn]['’](?=[a-z])/g, " ")
    .replace(/['’`"“”]/g, " ")
    // A dot between letters is an abbreviation's ("n.c.", "p.ant"); elsewhere it ends a word.
    .replace(/\.(?=\s|$|[,;:)\]+-])/g, " ")
    .replace(/[,;:()[\]{}<>=*!?|\\^~#@%$]/g, " ")
    // Between blanks or at the end it is a polarity, after a blank and before a word it parts words.
    .replace(/(^|\s)-(?=[a-z])/g, " ")
    .replace(/\s-\s+(?=[a-z0-9])/g, " ")
    .replace(/([a-z0-9])([+-])(?=\s|$|\/)/g, "$1$2 ")
    .trim();
  return plain.split(/\s+/).filter((word) => word !== "");
}

export function isStopWord(word: string): boolean {
  return STOP.has(word);
}
