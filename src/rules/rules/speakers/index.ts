import type { Rule } from "../../rule.ts";
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

/** The rules of this group, in the order in which a page lists them. */
export const rules: readonly Rule[] = [
  outputsTied,
  speakerNegativesCommoned,
  speakerLeadGrounded,
  commonGroundSpeakersOnBridgedOutputs,
  unusedSpeakerLeadsTogether,
  speakersCrossed,
  speakerPolaritySwapped,
  allChannelsReversed,
  sidesSwapped,
  frontAndRearSwapped,
  speakerLevelIntoLineInput,
  lineLevelIntoSpeakerInput,
  speakerOnInput,
  speakerLoadTooLow,
  bridgedLoadTooLow,
  tweeterWithoutCapacitor,
  amplifierNotWoken,
];
