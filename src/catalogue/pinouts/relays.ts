import { type Pinout, type PinoutRow, row } from "./pinout.ts";

const common = {
  group: "relay",
  side: "equipment",
  form: "housing",
  // A make relay enters the socket of a changeover relay.
  shell: "mini relay socket, ISO 7588-1",
  voltage_V: null,
  face: null,
  source:
    'Names of the terminals: DIN 72552 through published copies of its list; a UK technical blog, "Automotive Relays"; copies of a relay guide. ISO 7588-1 and DIN 72552 themselves were not read.',
  edition: "",
  caution:
    "Two footprints exist, A and B, in which 30 and 86 are exchanged: go by the numbers beside the blades, not by their places. A relay with a diode needs plus on 86: reversed, the diode shorts the lead that drives the coil. 87 and 87a are named here as on every common relay; the standard's own list uses 87 otherwise. Blades of 6.3 mm on 85, 86 and the contacts (one source).",
} as const;

const CONTACTS: readonly PinoutRow[] = [
  row("30", "relay-common", "takes", null, { note: "Common of the contact; usually the fused feed." }),
  row("85", "relay-coil-return", "takes", null, { note: "Coil, minus." }),
  row("86", "relay-control", "takes", null, { note: "Coil, plus." }),
  row("87", "relay-output", "gives", null, { note: "Joined to 30 while the coil is fed." }),
];

export const RELAY_MAKE: Pinout = {
  ...common,
  id: "relay-make",
  title: "Mini relay socket, make contact (4 blades)",
  rows: CONTACTS,
};

export const RELAY_CHANGEOVER: Pinout = {
  ...common,
  id: "relay-changeover",
  title: "Mini relay socket, changeover contact (5 blades)",
  rows: [
    ...CONTACTS,
    row("87a", "relay-output-at-rest", "gives", null, { note: "Joined to 30 while the coil is not fed." }),
  ],
};
