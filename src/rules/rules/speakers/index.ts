import type { Rule } from "../../rule.ts";
import outputsTied from "./outputs-tied.ts";
import speakerNegativesCommoned from "./speaker-negatives-commoned.ts";
import speakerPolaritySwapped from "./speaker-polarity-swapped.ts";
import speakersCrossed from "./speakers-crossed.ts";

/** The rules of this group, in the order in which a page lists them. */
export const rules: readonly Rule[] = [
  outputsTied,
  speakerNegativesCommoned,
  speakersCrossed,
  speakerPolaritySwapped,
];
