import type { ColourCode } from "../../graph/harness.ts";
import { type Pinout, type PinoutRow, row } from "./pinout.ts";

const common = { group: "trailer", side: "vehicle", form: "housing", voltage_V: 12, face: null } as const;

const BLADE_SOURCE =
  'Common practice, no formal standard for light vehicles (SAE J2863 is the usual reference, not read). Colours: a trailer-parts shop, "What do the Colors on 7-Way Trailer Light Wiring Mean?"; a trailer-plan site, "The RV Standard For Trailer Wire Colors"; a hobby note, "7-way trailer wiring colors".';

const BLADE_CAUTION =
  "Two colour sets are in use, in which brown, green, yellow and red each mean something else: join by function, never by colour. No source numbers the blades in a way that can be trusted, and clock positions contradict each other, so the cavities are named by what they do. Stop and turn share one lamp: a vehicle with separate stop lamps needs a converter. Merge left and right tail lamps in the vehicle only through diodes.";

/** The least that the parts shop allows: 16 AWG for lamps, 12 AWG for ground, brakes and charge; areas by ASTM B258. */
const LAMP = { area_mm2: 1.31, note: "16 AWG at least. The other set has another colour." } as const;
const HEAVY = { area_mm2: 3.31, note: "12 AWG at least." } as const;

type Colours = Readonly<Record<"tail" | "left" | "right" | "reverse", ColourCode>>;

function blade(colours: Colours, reverse: string): readonly PinoutRow[] {
  const lamp = (cavity: keyof Colours, name: string): PinoutRow =>
    row(cavity, name, "gives", [colours[cavity]], { ...LAMP, confidence: "disputed" });
  return [
    row("ground", "ground", "gives", ["WH"], HEAVY),
    row("brakes", "trailer-brake", "gives", ["BU"], HEAVY),
    row("charge", "trailer-charge", "gives", ["BK"], { ...HEAVY, note: `${HEAVY.note} One source has red.` }),
    lamp("tail", "tail-lamps"),
    lamp("left", "stop-turn-left"),
    lamp("right", "stop-turn-right"),
    { ...lamp("reverse", "reverse"), note: reverse },
  ];
}

/** The older colour set, that of the lamps on a 4-way flat connector. */
export const BLADE_7_TRADITIONAL: Pinout = {
  ...common,
  id: "blade-7-traditional",
  title: "North American 7-way blade, traditional colours",
  shell: "7-way blade",
  source: BLADE_SOURCE,
  edition: "",
  caution: BLADE_CAUTION,
  rows: blade(
    { tail: "BN", left: "YE", right: "GN", reverse: "VT" },
    `${LAMP.note} The centre blade. One source has black.`,
  ),
};

/** The colour set of recreational vehicles. */
export const BLADE_7_RV: Pinout = {
  ...common,
  id: "blade-7-rv",
  title: "North American 7-way blade, recreational-vehicle colours",
  shell: "7-way blade",
  source: BLADE_SOURCE,
  edition: "",
  caution: BLADE_CAUTION,
  rows: blade({ tail: "GN", left: "RD", right: "BN", reverse: "YE" }, `${LAMP.note} The centre blade.`),
};

const shop = { confidence: "one" } as const;

export const FLAT_4: Pinout = {
  ...common,
  id: "flat-4",
  title: "North American 4-way flat",
  shell: "4-way flat",
  source:
    'Common practice, no standard read. A trailer-parts shop\'s answers; a trailer-plan site, "The RV Standard For Trailer Wire Colors", which names SAE J2863.',
  edition: "",
  caution:
    "Stop and turn share one lamp: a vehicle with separate stop lamps needs a converter. The ground is the one contact of the other gender on each half (from memory).",
  rows: [
    row("ground", "ground", "gives", ["WH"], shop),
    row("tail", "tail-lamps", "gives", ["BN"], shop),
    row("left", "stop-turn-left", "gives", ["YE"], shop),
    row("right", "stop-turn-right", "gives", ["GN"], shop),
  ],
};
