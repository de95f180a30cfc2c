import type { Examples } from "../example.ts";
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

/** The examples of this group by the name of their rule. */
export const examples: Examples = {
  "antenna-power-as-turn-on": antennaPowerAsTurnOn,
  "illumination-on-dimmer-return": illuminationOnDimmerReturn,
  "illumination-on-steady-feed": illuminationOnSteadyFeed,
  "mute-lead-grounded": muteLeadGrounded,
  "one-lead-two-jobs": oneLeadTwoJobs,
  "park-lamp-on-dimmer-return": parkLampOnDimmerReturn,
  "parking-brake-grounded": parkingBrakeGrounded,
  "parking-brake-on-wrong-lead": parkingBrakeOnWrongLead,
  "reverse-trigger-from-wrong-place": reverseTriggerFromWrongPlace,
  "trigger-back-feeds-lamp": triggerBackFeedsLamp,
  "turn-on-from-constant": turnOnFromConstant,
  "turn-on-not-joined": turnOnNotJoined,
  "turn-on-overloaded": turnOnOverloaded,
};
