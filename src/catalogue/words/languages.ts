import { DUTCH } from "./dutch.ts";
import { ENGLISH, type Words } from "./english.ts";
import { ENGLISH_PHRASES } from "./english-phrases.ts";
import { FRENCH } from "./french.ts";
import { GERMAN } from "./german.ts";
import { ITALIAN } from "./italian.ts";
import { POLISH } from "./polish.ts";
import { SPANISH } from "./spanish.ts";

/** The languages that charts are read in. */
export const LANGUAGES: readonly Words[] = [
  { ideas: ENGLISH, phrases: ENGLISH_PHRASES },
  GERMAN,
  DUTCH,
  POLISH,
  FRENCH,
  SPANISH,
  ITALIAN,
];
