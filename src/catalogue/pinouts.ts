/**
 * Ready connectors, each with its source and edition beside it. None of the standards named was read in full:
 * each row says how many published reports agree.
 */
import { SAE_J1962_A, SAE_J1962_B } from "./pinouts/diagnostics.ts";
import type { Pinout, PinoutGroup } from "./pinouts/pinout.ts";
import { ISO_10487_A, ISO_10487_B, ISO_10487_C } from "./pinouts/radio.ts";
import { RECEIVER_FLYING_LEADS } from "./pinouts/receiver-leads.ts";
import { RELAY_CHANGEOVER, RELAY_MAKE } from "./pinouts/relays.ts";
import { RCA_LEFT, RCA_RIGHT, RCA_VIDEO, USB_2 } from "./pinouts/sound-and-data.ts";
import { ISO_1185, SAE_J560 } from "./pinouts/trailer-heavy.ts";
import { ISO_1724, ISO_3732, ISO_11446 } from "./pinouts/trailer-light.ts";
import { BLADE_7_RV, BLADE_7_TRADITIONAL, FLAT_4 } from "./pinouts/trailer-north-america.ts";

export { SAE_J1962_A, SAE_J1962_B } from "./pinouts/diagnostics.ts";
export {
  type Confidence,
  cavitiesOf,
  type Pinout,
  type PinoutGroup,
  type PinoutRow,
} from "./pinouts/pinout.ts";
export { ISO_10487_A, ISO_10487_B, ISO_10487_C } from "./pinouts/radio.ts";
export { RECEIVER_FLYING_LEADS, RECEIVER_LEADS } from "./pinouts/receiver-leads.ts";
export { RELAY_CHANGEOVER, RELAY_MAKE } from "./pinouts/relays.ts";
export { RCA_LEFT, RCA_RIGHT, RCA_VIDEO, USB_2 } from "./pinouts/sound-and-data.ts";
export { ISO_1185, SAE_J560 } from "./pinouts/trailer-heavy.ts";
export { ISO_1724, ISO_3732, ISO_11446 } from "./pinouts/trailer-light.ts";
export { BLADE_7_RV, BLADE_7_TRADITIONAL, FLAT_4 } from "./pinouts/trailer-north-america.ts";

/** Every ready connector, group by group, in the order in which a list shows them. */
export const PINOUTS: readonly Pinout[] = [
  ISO_10487_A,
  ISO_10487_B,
  ISO_10487_C,
  RECEIVER_FLYING_LEADS,
  ISO_11446,
  ISO_1724,
  ISO_3732,
  ISO_1185,
  SAE_J560,
  BLADE_7_TRADITIONAL,
  BLADE_7_RV,
  FLAT_4,
  SAE_J1962_A,
  SAE_J1962_B,
  RELAY_MAKE,
  RELAY_CHANGEOVER,
  RCA_LEFT,
  RCA_RIGHT,
  RCA_VIDEO,
  USB_2,
];

export const PINOUT_GROUPS: Readonly<Record<PinoutGroup, string>> = {
  radio: "Radio",
  trailer: "Trailer",
  diagnostics: "Diagnostics",
  relay: "Relay",
  "sound-and-data": "Sound and data",
};
