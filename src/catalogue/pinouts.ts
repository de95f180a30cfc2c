import type { Cavity, Colour, ColourCode, Direction, JobSide } from "../graph/harness.ts";

/**
 * How sure a row is. `several`: two or more independent published sources agree. `one`: a single source.
 * `disputed`: sources differ, see the note. `memory`: recollection. A rule may hint on the last three, not forbid.
 */
export type Confidence = "several" | "one" | "disputed" | "memory";

export type PinoutRow = {
  readonly cavity: string;
  /** A function of the vocabulary. */
  readonly function: string;
  /** As seen from what stands behind the cavity on the pinout's own side. */
  readonly direction: Direction;
  readonly colour: Colour | null;
  readonly area_mm2: number | "unknown";
  readonly current_A: number | "unknown";
  readonly confidence: Confidence;
  readonly note: string;
};

export type Pinout = {
  readonly id: string;
  readonly title: string;
  /** Whose directions the rows give: the receiver's, or the towing vehicle's. */
  readonly side: JobSide;
  readonly shell: string;
  /** Rows of the face, by position in `rows`; `null` where no source shows the face. */
  readonly face: {
    readonly view: "wire-side" | "mating-face";
    readonly rows: readonly (readonly number[])[];
  } | null;
  readonly source: string;
  /** What a person must know before trusting it. */
  readonly caution: string;
  readonly rows: readonly PinoutRow[];
};

type Extra = Partial<Omit<PinoutRow, "cavity" | "function" | "direction" | "colour">>;

function row(
  cavity: string,
  name: string,
  direction: Direction,
  colour: readonly [ColourCode, ColourCode?] | null = null,
  extra: Extra = {},
): PinoutRow {
  return {
    cavity,
    function: name,
    direction,
    colour: colour ? { base: colour[0], tracer: colour[1] ?? null } : null,
    area_mm2: "unknown",
    current_A: "unknown",
    confidence: "several",
    note: "",
    ...extra,
  };
}

const RADIO_SOURCE =
  'Encyclopaedia articles "Connectors for car audio" and "ISO 10487"; pinoutguide.com, "36 (20+8+8) pin Head Unit / Car Stereo ISO connector"; a parts retailer\'s sheet for an ISO radio lead. The standard itself was not read.';

const RADIO_CAUTION =
  "ISO 10487 fixes the shape of the housings; the functions are what is usual. Measure A4 and A7 at the vehicle before plugging in.";

const DOUBLE_ROW = {
  view: "wire-side",
  rows: [
    [1, 3, 5, 7],
    [2, 4, 6, 8],
  ],
} as const;

/** Power block. Colours are those of the usual adapter lead, not the vehicle's. */
export const ISO_10487_A: Pinout = {
  id: "iso-10487-a",
  title: "ISO 10487 block A, power",
  side: "equipment",
  shell: "ISO 10487 A",
  face: DOUBLE_ROW,
  source: RADIO_SOURCE,
  caution: RADIO_CAUTION,
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
  id: "iso-10487-b",
  title: "ISO 10487 block B, loudspeakers",
  side: "equipment",
  shell: "ISO 10487 B",
  face: DOUBLE_ROW,
  source: RADIO_SOURCE,
  caution: `${RADIO_CAUTION} A negative that is bridged must not be joined to another nor to ground (from memory).`,
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
  id: "iso-10487-c",
  title: "ISO 10487 block C, line level, data and changer",
  side: "equipment",
  shell: "ISO 10487 C",
  face: null,
  source: RADIO_SOURCE,
  caution: `${RADIO_CAUTION} Block C is one maker's example above all: never trust it without a meter.`,
  rows: [
    row("C1", "line-rear-left-signal", "gives"),
    row("C2", "line-rear-right-signal", "gives"),
    row("C3", "sense-ground", "takes", null, { note: "Common return of the four line outputs." }),
    row("C4", "line-front-left-signal", "gives"),
    row("C5", "line-front-right-signal", "gives"),
    row("C6", "amplifier-turn-on", "gives", null, { current_A: 0.15 }),
    row("C7", "data", "takes", null, { note: "Receive data." }),
    row("C8", "data", "gives", null, { note: "Transmit data." }),
    row("C9", "ground", "takes"),
    row("C10", "switched-feed", "gives", null, { current_A: 0.15 }),
    row("C11", "data", "takes", null, { note: "Remote control." }),
    row("C12", "sense-ground", "takes", null, { note: "Return of the remote control." }),
    row("C13", "data", "takes", null, { note: "From the changer." }),
    row("C14", "data", "gives", null, { note: "To the changer." }),
    row("C15", "constant-feed", "gives", null, { note: "To the changer." }),
    row("C16", "switched-feed", "gives", null, { current_A: 0.3, note: "To the changer." }),
    row("C17", "sense-ground", "takes", null, { note: "Return of the changer's data." }),
    row("C18", "sense-ground", "takes", null, { note: "Return of the changer's sound." }),
    row("C19", "unknown", "takes", null, { note: "Line level from the changer, left." }),
    row("C20", "unknown", "takes", null, { note: "Line level from the changer, right." }),
  ],
};

const TRAILER_SOURCE =
  'A trailer-connector maker\'s standards pages "ISO 11446" and "ISO 1724 type N"; a second maker\'s allocation sheet for 12 V; a passenger vehicle owner\'s manual, section on towing; encyclopaedia articles "ISO standards for trailer connectors" and "ISO 11446". Colours after ISO 4141-3 through these. The standards themselves were not read.';

const thin = { area_mm2: 1.5 } as const;
const thick = { area_mm2: 2.5 } as const;

/** The first seven of both trailer sockets; colours and sizes as in the cable. */
const TRAILER_LIGHTS: readonly PinoutRow[] = [
  row("1", "indicator-left", "gives", ["YE"], thin),
  row("2", "fog-rear", "gives", ["BU"], thin),
  row("3", "ground", "gives", ["WH"], thick),
  row("4", "indicator-right", "gives", ["GN"], thin),
  row("5", "tail-right", "gives", ["BN"], thin),
  row("6", "stop-lamp", "gives", ["RD"], thin),
  row("7", "tail-left", "gives", ["BK"], thin),
];

const PLATE_LAMP = "The number-plate lamp must not bridge the left and right tail-lamp cavities.";

export const ISO_1724: Pinout = {
  id: "iso-1724",
  title: "ISO 1724 trailer socket, 12 V, 7-pin type N",
  side: "vehicle",
  shell: "ISO 1724",
  face: null,
  source: TRAILER_SOURCE,
  caution: PLATE_LAMP,
  rows: TRAILER_LIGHTS.map((item) =>
    item.cavity === "2"
      ? {
          ...item,
          confidence: "disputed",
          note: "Rear fog lamp; older or other use: constant feed. One source has 2.5 mm².",
        }
      : item.cavity === "3"
        ? { ...item, note: "Ground for all." }
        : item,
  ),
};

export const ISO_11446: Pinout = {
  id: "iso-11446",
  title: "ISO 11446 trailer socket, 12 V, 13-pin",
  side: "vehicle",
  shell: "ISO 11446",
  face: null,
  source: TRAILER_SOURCE,
  caution: `${PLATE_LAMP} The grounds 3, 11 and 13 must not be joined in the trailer. At least one other colour set for 8 to 13 is in use.`,
  rows: [
    ...TRAILER_LIGHTS.map((item) =>
      item.cavity === "3" ? { ...item, function: "ground-lamps", note: "Ground for 1 to 8." } : item,
    ),
    row("8", "reverse", "gives", ["PK"], { ...thin, note: "Also locks out an overrun brake." }),
    row("9", "constant-feed", "gives", ["OG"], thick),
    row("10", "ignition-feed", "gives", ["GY"], thick),
    row("11", "ground-switched", "gives", ["WH", "BK"], { ...thick, note: "Ground for 10." }),
    row("12", "not-used", "none", null, {
      confidence: "disputed",
      note: "Reserved in some editions; trailer-present coding, bridged to 3 in the plug, in others.",
    }),
    row("13", "ground-constant", "gives", ["WH", "RD"], { ...thick, note: "Ground for 9." }),
  ],
};

export const PINOUTS: readonly Pinout[] = [ISO_10487_A, ISO_10487_B, ISO_10487_C, ISO_11446, ISO_1724];

/**
 * Leads of an aftermarket receiver, by what they usually are. Adapter leads follow them too; a vehicle's own do not.
 */
export const RECEIVER_LEADS: {
  readonly source: string;
  readonly rows: readonly Pick<PinoutRow, "function" | "direction" | "colour" | "confidence" | "note">[];
} = {
  source:
    'A mobile-video retailer\'s "Car Stereo Radio Power Wiring Guide"; a car-audio retailer\'s "Wiring Harness Color Standards"; a UK installer\'s "How to identify Aftermarket Car Stereo Wire Colours"; encyclopaedia article "Connectors for car audio". No standard was found.',
  rows: [
    row("", "constant-feed", "takes", ["YE"]),
    row("", "switched-feed", "takes", ["RD"]),
    row("", "ground", "takes", ["BK"]),
    row("", "antenna-power", "gives", ["BU"]),
    row("", "amplifier-turn-on", "gives", ["BU", "WH"], {
      note: "Some receivers have one blue lead for both.",
    }),
    row("", "illumination", "takes", ["OG", "WH"], {
      confidence: "disputed",
      note: "One source tells orange (on or off) from orange with white (variable); the others know only the latter.",
    }),
    row("", "speaker-front-left-plus", "gives", ["WH"]),
    row("", "speaker-front-left-minus", "gives", ["WH", "BK"]),
    row("", "speaker-front-right-plus", "gives", ["GY"]),
    row("", "speaker-front-right-minus", "gives", ["GY", "BK"]),
    row("", "speaker-rear-left-plus", "gives", ["GN"]),
    row("", "speaker-rear-left-minus", "gives", ["GN", "BK"]),
    row("", "speaker-rear-right-plus", "gives", ["VT"]),
    row("", "speaker-rear-right-minus", "gives", ["VT", "BK"]),
    row("", "parking-brake", "takes", ["GN"], {
      confidence: "one",
      note: "Light green; IEC 60757 has one green.",
    }),
    row("", "reverse", "takes", ["VT", "WH"], { confidence: "one", note: "The source says light violet." }),
    row("", "mute", "takes", ["BN"], {
      confidence: "one",
      note: "Brown is ground in vehicles wired to DIN colours.",
    }),
    row("", "speed", "takes", ["PK"], { confidence: "one" }),
  ],
};

const FLIPPED: Readonly<Record<Direction, Direction>> = {
  gives: "takes",
  takes: "gives",
  both: "both",
  none: "none",
  unknown: "unknown",
};

/**
 * The cavities of a connector that follows a pinout, seen from either side of the job: what a receiver takes,
 * the vehicle gives. Leads get the pinout's colour only on the side that it speaks for.
 */
export function cavitiesOf(pinout: Pinout, side: JobSide): readonly Cavity[] {
  const own = side === pinout.side;
  return pinout.rows.map((item) => ({
    label: item.cavity,
    function: item.function,
    text: item.note,
    direction: own ? item.direction : FLIPPED[item.direction],
    lead: own && item.colour ? { colour: item.colour, area_mm2: item.area_mm2 } : null,
    use: item.function === "not-used" ? "optional" : "expected",
    current_A: item.current_A,
    fuse_A: "unknown",
  }));
}
