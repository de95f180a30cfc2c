import type { Examples } from "../example.ts";
import antennaAmplifierUnpowered from "./antenna-amplifier-unpowered.ts";
import antennaPowerGrounded from "./antenna-power-grounded.ts";
import coaxSpliced from "./coax-spliced.ts";
import shieldGroundedTwice from "./shield-grounded-twice.ts";
import shieldNotCarriedThrough from "./shield-not-carried-through.ts";
import signalBesidePower from "./signal-beside-power.ts";
import signalPairParted from "./signal-pair-parted.ts";
import triggerCoreAtOneEnd from "./trigger-core-at-one-end.ts";

/** The examples of this group by the name of their rule. */
export const examples: Examples = {
  "shield-grounded-twice": shieldGroundedTwice,
  "shield-not-carried-through": shieldNotCarriedThrough,
  "signal-pair-parted": signalPairParted,
  "coax-spliced": coaxSpliced,
  "antenna-power-grounded": antennaPowerGrounded,
  "antenna-amplifier-unpowered": antennaAmplifierUnpowered,
  "trigger-core-at-one-end": triggerCoreAtOneEnd,
  "signal-beside-power": signalBesidePower,
};
