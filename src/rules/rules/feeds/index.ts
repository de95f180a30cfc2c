import type { Rule } from "../../rule.ts";
import bothFeedsOneKind from "./both-feeds-one-kind.ts";
import feedShortedToGround from "./feed-shorted-to-ground.ts";
import feedsSwapped from "./feeds-swapped.ts";
import feedsTied from "./feeds-tied.ts";
import supplyReversed from "./supply-reversed.ts";

/** The rules of this group, in the order in which a page lists them. */
export const rules: readonly Rule[] = [
  feedsTied,
  feedShortedToGround,
  supplyReversed,
  feedsSwapped,
  bothFeedsOneKind,
];
