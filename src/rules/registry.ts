import type { Rule } from "./rule.ts";
import bothFeedsOneKind from "./rules/both-feeds-one-kind.ts";
import duplicateDesignation from "./rules/duplicate-designation.ts";
import feedShortedToGround from "./rules/feed-shorted-to-ground.ts";
import feedsSwapped from "./rules/feeds-swapped.ts";
import feedsTied from "./rules/feeds-tied.ts";
import illuminationOnSteadyFeed from "./rules/illumination-on-steady-feed.ts";
import looseLead from "./rules/loose-lead.ts";
import looseLiveLead from "./rules/loose-live-lead.ts";
import noFuse from "./rules/no-fuse.ts";
import outputsTied from "./rules/outputs-tied.ts";
import parkingBrakeGrounded from "./rules/parking-brake-grounded.ts";
import requiredLeadMissing from "./rules/required-lead-missing.ts";
import sameFunctionUnjoined from "./rules/same-function-unjoined.ts";
import sameShellMatedWrongly from "./rules/same-shell-mated-wrongly.ts";
import severalSparesUnderOneCap from "./rules/several-spares-under-one-cap.ts";
import spareNotCapped from "./rules/spare-not-capped.ts";
import speakerNegativesCommoned from "./rules/speaker-negatives-commoned.ts";
import speakerPolaritySwapped from "./rules/speaker-polarity-swapped.ts";
import speakersCrossed from "./rules/speakers-crossed.ts";
import supplyReversed from "./rules/supply-reversed.ts";
import unitWithoutGround from "./rules/unit-without-ground.ts";
import unusedLinePlugUncovered from "./rules/unused-line-plug-uncovered.ts";

/** Every rule, in the order in which a page lists them. One file each; the file is named for the rule. */
export const RULES: readonly Rule[] = [
  looseLiveLead,
  noFuse,
  feedsTied,
  feedShortedToGround,
  supplyReversed,
  parkingBrakeGrounded,
  looseLead,
  feedsSwapped,
  bothFeedsOneKind,
  unitWithoutGround,
  requiredLeadMissing,
  sameFunctionUnjoined,
  spareNotCapped,
  severalSparesUnderOneCap,
  outputsTied,
  speakerNegativesCommoned,
  speakersCrossed,
  speakerPolaritySwapped,
  sameShellMatedWrongly,
  unusedLinePlugUncovered,
  illuminationOnSteadyFeed,
  duplicateDesignation,
];

const byId = new Map(RULES.map((rule) => [rule.meta.id, rule]));

/** The rule of that name; `undefined` for a waiver of a rule that this version has not heard of. */
export function ruleOf(id: string): Rule | undefined {
  return byId.get(id);
}
