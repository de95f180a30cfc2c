import type { Words } from "./english.ts";

/**
 * Turns phrases listed by what they mean into the form that a lexicon has: `{ "front left": "vl, lvl" }` gives
 * `{ vl: "front left", lvl: "front left" }`.
 * @param meanings the ideas, parted by blanks, to the phrases that stand for all of them, parted by commas
 * @throws where a phrase stands for two meanings
 */
export function phrasesByMeaning(meanings: Readonly<Record<string, string>>): Words["phrases"] {
  const phrases: Record<string, string> = {};
  for (const [ideas, list] of Object.entries(meanings)) {
    for (const phrase of list.split(",").map((one) => one.trim())) {
      if (phrases[phrase] !== undefined) throw new Error(`the phrase "${phrase}" has two meanings`);
      phrases[phrase] = ideas;
    }
  }
  return phrases;
}
