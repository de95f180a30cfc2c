import type { Rule } from "../../rule.ts";
import coilWithoutSuppression from "./coil-without-suppression.ts";
import diodeBlocksItsCircuit from "./diode-blocks-its-circuit.ts";
import diodeTooSmall from "./diode-too-small.ts";
import lostGroundBackFeeds from "./lost-ground-back-feeds.ts";
import relayChatters from "./relay-chatters.ts";
import relayContactOverloaded from "./relay-contact-overloaded.ts";
import relayContactUnfused from "./relay-contact-unfused.ts";
import relayContactsMixed from "./relay-contacts-mixed.ts";
import relayHoldsItself from "./relay-holds-itself.ts";
import relayOnWithKeyOff from "./relay-on-with-key-off.ts";
import relayPinPlansMixed from "./relay-pin-plans-mixed.ts";
import sourcesFeedOneAnother from "./sources-feed-one-another.ts";
import suppressedCoilReversed from "./suppressed-coil-reversed.ts";

/** The rules of this group, in the order in which a page lists them. */
export const rules: readonly Rule[] = [
  coilWithoutSuppression,
  suppressedCoilReversed,
  relayContactsMixed,
  relayPinPlansMixed,
  relayContactOverloaded,
  relayContactUnfused,
  relayHoldsItself,
  relayOnWithKeyOff,
  relayChatters,
  diodeBlocksItsCircuit,
  diodeTooSmall,
  sourcesFeedOneAnother,
  lostGroundBackFeeds,
];
