import type { Rule } from "../../rule.ts";
import alarmFeedShared from "./alarm-feed-shared.ts";
import bothFeedsOneKind from "./both-feeds-one-kind.ts";
import feedOfWrongKind from "./feed-of-wrong-kind.ts";
import feedShortedToGround from "./feed-shorted-to-ground.ts";
import feedsSwapped from "./feeds-swapped.ts";
import feedsTied from "./feeds-tied.ts";
import forbiddenCircuitTapped from "./forbidden-circuit-tapped.ts";
import fuseTapBackwards from "./fuse-tap-backwards.ts";
import isolatorBypassed from "./isolator-bypassed.ts";
import negativeIsolatorBypassed from "./negative-isolator-bypassed.ts";
import suppliesJoined from "./supplies-joined.ts";
import supplyReversed from "./supply-reversed.ts";
import switchedInputOnAnotherLead from "./switched-input-on-another-lead.ts";
import tappedCircuitOverloaded from "./tapped-circuit-overloaded.ts";
import watchedOutputTapped from "./watched-output-tapped.ts";
import wrongVoltage from "./wrong-voltage.ts";

/** The rules of this group, in the order in which a page lists them. */
export const rules: readonly Rule[] = [
  feedsTied,
  feedShortedToGround,
  supplyReversed,
  suppliesJoined,
  forbiddenCircuitTapped,
  negativeIsolatorBypassed,
  feedsSwapped,
  bothFeedsOneKind,
  feedOfWrongKind,
  switchedInputOnAnotherLead,
  watchedOutputTapped,
  tappedCircuitOverloaded,
  wrongVoltage,
  isolatorBypassed,
  fuseTapBackwards,
  alarmFeedShared,
];
