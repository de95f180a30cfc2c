import type { Examples } from "../example.ts";
import allChannelsReversed from "./all-channels-reversed.ts";
import amplifierNotWoken from "./amplifier-not-woken.ts";
import bridgedLoadTooLow from "./bridged-load-too-low.ts";
import commonGroundSpeakersOnBridgedOutputs from "./common-ground-speakers-on-bridged-outputs.ts";
import frontAndRearSwapped from "./front-and-rear-swapped.ts";
import lineLevelIntoSpeakerInput from "./line-level-into-speaker-input.ts";
import outputsTied from "./outputs-tied.ts";
import sidesSwapped from "./sides-swapped.ts";
import speakerLeadGrounded from "./speaker-lead-grounded.ts";
import speakerLevelIntoLineInput from "./speaker-level-into-line-input.ts";
import speakerLoadTooLow from "./speaker-load-too-low.ts";
import speakerNegativesCommoned from "./speaker-negatives-commoned.ts";
import speakerOnInput from "./speaker-on-input.ts";
import speakerPolaritySwapped from "./speaker-polarity-swapped.ts";
import speakersCrossed from "./speakers-crossed.ts";
import tweeterWithoutCapacitor from "./tweeter-without-capacitor.ts";
import unusedSpeakerLeadsTogether from "./unused-speaker-leads-together.ts";

/** The examples of this group by the name of their rule. */
export const examples: Examples = {
  "outputs-tied": outputsTied,
  "speaker-negatives-commoned": speakerNegativesCommoned,
  "speaker-lead-grounded": speakerLeadGrounded,
  "common-ground-speakers-on-bridged-outputs": commonGroundSpeakersOnBridgedOutputs,
  "unused-speaker-leads-together": unusedSpeakerLeadsTogether,
  "speakers-crossed": speakersCrossed,
  "speaker-polarity-swapped": speakerPolaritySwapped,
  "all-channels-reversed": allChannelsReversed,
  "sides-swapped": sidesSwapped,
  "front-and-rear-swapped": frontAndRearSwapped,
  "speaker-level-into-line-input": speakerLevelIntoLineInput,
  "line-level-into-speaker-input": lineLevelIntoSpeakerInput,
  "speaker-on-input": speakerOnInput,
  "speaker-load-too-low": speakerLoadTooLow,
  "bridged-load-too-low": bridgedLoadTooLow,
  "tweeter-without-capacitor": tweeterWithoutCapacitor,
  "amplifier-not-woken": amplifierNotWoken,
};
