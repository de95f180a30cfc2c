import type { Rule } from "../../rule.ts";
import antennaAmplifierUnpowered from "./antenna-amplifier-unpowered.ts";
import antennaPowerGrounded from "./antenna-power-grounded.ts";
import coaxSpliced from "./coax-spliced.ts";
import shieldGroundedTwice from "./shield-grounded-twice.ts";
import shieldNotCarriedThrough from "./shield-not-carried-through.ts";
import signalBesidePower from "./signal-beside-power.ts";
import signalPairParted from "./signal-pair-parted.ts";
import triggerCoreAtOneEnd from "./trigger-core-at-one-end.ts";

/** The rules of this group, in the order in which a page lists them. */
export const rules: readonly Rule[] = [
  shieldGroundedTwice,
  shieldNotCarriedThrough,
  signalPairParted,
  coaxSpliced,
  antennaPowerGrounded,
  antennaAmplifierUnpowered,
  triggerCoreAtOneEnd,
  signalBesidePower,
];
