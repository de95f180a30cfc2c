import { type Pinout, row } from "./pinout.ts";

const SOURCE =
  'Encyclopaedia articles "Connectors for car audio" and "ISO 10487"; pinoutguide.com, "36 (20+8+8) pin Head Unit / Car Stereo ISO connector"; a parts retailer\'s sheet for an ISO radio lead. The standard itself was not read.';

const CAUTION =
  "ISO 10487 fixes the shape of the housings; the functions are what is usual. Measure A4 and A7 at the vehicle before plugging in.";

const DOUBLE_ROW = {
  view: "wire-side",
  rows: [
    [1, 3, 5, 7],
    [2, 4, 6, 8],
  ],
} as const;

const common = {
  group: "radio",
  side: "equipment",
  form: "housing",
  voltage_V: 12,
  source: SOURCE,
  edition: "1995, parts 1 and 2",
} as const;

/** Power block. Colours are those of the usual adapter lead, not the vehicle's. */
export const ISO_10487_A: Pinout = {
  ...common,
  id: "iso-10487-a",
  title: "ISO 10487 block A, power",
  shell: "ISO 10487 A",
  face: DOUBLE_ROW,
  caution: CAUTION,
  rows: [
    row("A1", "speed", "takes", null, {
      note: "Often empty. If the speedometer dies when the receiver is plugged in, the receiver grounds this cavity.",
    }),
    row("A2", "mute", "takes", null, { note: "Active when taken to ground; optional." }),
    row("A3", "not-used", "none", null, {
      confidence: "disputed",
      note: "Two sources call it unused, two the reversing-lamp signal.",
    }),
    row("A4", "constant-feed", "takes", ["YE"], { note: "Exchanged with A7 on some vehicles." }),
    row("A5", "antenna-power", "gives", ["BU"], {
      current_A: 0.15,
      note: "Lists give 150 to 300 mA; the lower is taken. Some receivers put amplifier turn-on here.",
    }),
    row("A6", "illumination", "takes", ["OG", "WH"], { note: "Optional; may be dimmed." }),
    row("A7", "switched-feed", "takes", ["RD"], { note: "Exchanged with A4 on some vehicles." }),
    row("A8", "ground", "takes", ["BK"]),
  ],
};

/** Loudspeaker block: four pairs, none of whose negatives is ground. */
export const ISO_10487_B: Pinout = {
  ...common,
  id: "iso-10487-b",
  title: "ISO 10487 block B, loudspeakers",
  shell: "ISO 10487 B",
  face: DOUBLE_ROW,
  caution: `${CAUTION} A negative that is bridged must not be joined to another nor to ground (from memory).`,
  rows: [
    row("B1", "speaker-rear-right-plus", "gives", ["VT"]),
    row("B2", "speaker-rear-right-minus", "gives", ["VT", "BK"]),
    row("B3", "speaker-front-right-plus", "gives", ["GY"]),
    row("B4", "speaker-front-right-minus", "gives", ["GY", "BK"]),
    row("B5", "speaker-front-left-plus", "gives", ["WH"]),
    row("B6", "speaker-front-left-minus", "gives", ["WH", "BK"]),
    row("B7", "speaker-rear-left-plus", "gives", ["GN"]),
    row("B8", "speaker-rear-left-minus", "gives", ["GN", "BK"]),
  ],
};

/** Line level, telephone or display, changer: C1 is 1 to 6, C2 is 7 to 12, C3 is 13 to 20. */
export const ISO_10487_C: Pinout = {
  ...common,
  id: "iso-10487-c",
  title: "ISO 10487 block C, line level, data and changer",
  shell: "ISO 10487 C",
  face: null,
  caution: `${CAUTION} Block C is one maker's example above all: never trust it without a meter. It comes as one block of 20 or as three that hook together: C1 to C6, C7 to C12, C13 to C20.`,
  rows: [
    row("C1", "line-rear-left-signal", "gives"),
    row("C2", "line-rear-right-signal", "gives"),
    row("C3", "audio-ground", "takes", null, { note: "Common return of the four line outputs." }),
    row("C4", "line-front-left-signal", "gives"),
    row("C5", "line-front-right-signal", "gives"),
    row("C6", "amplifier-turn-on", "gives", null, { current_A: 0.15 }),
    row("C7", "data-receive", "takes"),
    row("C8", "data-transmit", "gives"),
    row("C9", "ground", "takes"),
    row("C10", "switched-feed", "gives", null, { current_A: 0.15 }),
    row("C11", "remote-control", "takes"),
    row("C12", "sense-ground", "takes", null, { note: "Return of the remote control." }),
    row("C13", "data-receive", "takes", null, { note: "From the changer." }),
    row("C14", "data-transmit", "gives", null, { note: "To the changer." }),
    row("C15", "constant-feed", "gives", null, { note: "To the changer." }),
    row("C16", "switched-feed", "gives", null, { current_A: 0.3, note: "To the changer." }),
    row("C17", "sense-ground", "takes", null, { note: "Return of the changer's data." }),
    row("C18", "aux-ground", "takes", null, { note: "Return of the changer's sound." }),
    row("C19", "aux-left", "takes", null, { note: "Line level from the changer." }),
    row("C20", "aux-right", "takes", null, { note: "Line level from the changer." }),
  ],
};
