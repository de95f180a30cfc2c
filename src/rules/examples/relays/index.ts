import type { Examples } from "../example.ts";
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

/** The examples of this group by the name of their rule. */
export const examples: Examples = {
  "coil-without-suppression": coilWithoutSuppression,
  "diode-blocks-its-circuit": diodeBlocksItsCircuit,
  "diode-too-small": diodeTooSmall,
  "lost-ground-back-feeds": lostGroundBackFeeds,
  "relay-chatters": relayChatters,
  "relay-contact-overloaded": relayContactOverloaded,
  "relay-contact-unfused": relayContactUnfused,
  "relay-contacts-mixed": relayContactsMixed,
  "relay-holds-itself": relayHoldsItself,
  "relay-on-with-key-off": relayOnWithKeyOff,
  "relay-pin-plans-mixed": relayPinPlansMixed,
  "sources-feed-one-another": sourcesFeedOneAnother,
  "suppressed-coil-reversed": suppressedCoilReversed,
};
