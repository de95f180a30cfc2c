import type { Examples } from "../example.ts";
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

/** The examples of this group by the name of their rule. */
export const examples: Examples = {
  "feeds-tied": feedsTied,
  "feed-shorted-to-ground": feedShortedToGround,
  "supply-reversed": supplyReversed,
  "supplies-joined": suppliesJoined,
  "forbidden-circuit-tapped": forbiddenCircuitTapped,
  "negative-isolator-bypassed": negativeIsolatorBypassed,
  "feeds-swapped": feedsSwapped,
  "both-feeds-one-kind": bothFeedsOneKind,
  "feed-of-wrong-kind": feedOfWrongKind,
  "switched-input-on-another-lead": switchedInputOnAnotherLead,
  "watched-output-tapped": watchedOutputTapped,
  "tapped-circuit-overloaded": tappedCircuitOverloaded,
  "wrong-voltage": wrongVoltage,
  "isolator-bypassed": isolatorBypassed,
  "fuse-tap-backwards": fuseTapBackwards,
  "alarm-feed-shared": alarmFeedShared,
};
