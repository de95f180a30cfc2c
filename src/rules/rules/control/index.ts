import type { Rule } from "../../rule.ts";
import antennaPowerAsTurnOn from "./antenna-power-as-turn-on.ts";
import illuminationOnDimmerReturn from "./illumination-on-dimmer-return.ts";
import illuminationOnSteadyFeed from "./illumination-on-steady-feed.ts";
import muteLeadGrounded from "./mute-lead-grounded.ts";
import oneLeadTwoJobs from "./one-lead-two-jobs.ts";
import parkLampOnDimmerReturn from "./park-lamp-on-dimmer-return.ts";
import parkingBrakeGrounded from "./parking-brake-grounded.ts";
import parkingBrakeOnWrongLead from "./parking-brake-on-wrong-lead.ts";
import reverseTriggerFromWrongPlace from "./reverse-trigger-from-wrong-place.ts";
import triggerBackFeedsLamp from "./trigger-back-feeds-lamp.ts";
import turnOnFromConstant from "./turn-on-from-constant.ts";
import turnOnNotJoined from "./turn-on-not-joined.ts";
import turnOnOverloaded from "./turn-on-overloaded.ts";

/** The rules of this group, in the order in which a page lists them. */
export const rules: readonly Rule[] = [
  parkingBrakeGrounded,
  parkingBrakeOnWrongLead,
  parkLampOnDimmerReturn,
  triggerBackFeedsLamp,
  reverseTriggerFromWrongPlace,
  illuminationOnSteadyFeed,
  illuminationOnDimmerReturn,
  antennaPowerAsTurnOn,
  turnOnNotJoined,
  turnOnFromConstant,
  turnOnOverloaded,
  oneLeadTwoJobs,
  muteLeadGrounded,
];
