import { ENGLISH, ENGLISH_PHRASES, type Words } from "./english.ts";

/** The languages that charts are read in. */
export const LANGUAGES: readonly Words[] = [{ ideas: ENGLISH, phrases: ENGLISH_PHRASES }];
