import { type Pinout, type PinoutRow, row } from "./pinout.ts";

const SOURCE =
  'A trailer-connector maker\'s standards pages "ISO 11446" and "ISO 1724 type N"; a second maker\'s allocation sheet for 12 V; a passenger vehicle owner\'s manual, section on towing; encyclopaedia articles "ISO standards for trailer connectors" and "ISO 11446". Colours after ISO 4141-3 through these. The standards themselves were not read.';

const S_SOURCE =
  'A connector maker\'s allocation sheet for 12 V; two caravan advice sites, "12S socket wiring" and "7 pin trailer plug 12S"; a vehicle-history society\'s page on trailer connections; German encyclopaedia article "ISO 3732". The standard itself was not read.';

const common = { group: "trailer", side: "vehicle", form: "housing", voltage_V: 12, face: null } as const;

const thin = { area_mm2: 1.5 } as const;
const thick = { area_mm2: 2.5 } as const;

/** The first seven of both lighting sockets; colours and sizes as in the cable. */
const LIGHTS: readonly PinoutRow[] = [
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
  ...common,
  id: "iso-1724",
  title: "ISO 1724 trailer socket, 12 V, 7-pin type N",
  shell: "ISO 1724",
  source: SOURCE,
  edition: "2003; first 1980",
  caution: `${PLATE_LAMP} In Australia the same shell has the electric brakes in 5 and the reversing lamp in 2 (one source): such a trailer brakes whenever the side lights are on.`,
  rows: LIGHTS.map((item) =>
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

const SIZE_FROM_MEMORY = "Size from memory.";

/** The second socket of a caravan. Its contacts lie so that a type N plug does not enter. */
export const ISO_3732: Pinout = {
  ...common,
  id: "iso-3732",
  title: "ISO 3732 trailer socket, 12 V, 7-pin type S",
  shell: "ISO 3732",
  source: S_SOURCE,
  edition: "",
  caution:
    "Cavities 2, 5 and 7 differ by country and by the caravan's age: look at both halves. Take the grounds 3 and 7 to the vehicle by separate leads. Some tables headed ISO 3732 print the lighting socket ISO 1724 by mistake.",
  rows: [
    row("1", "reverse", "gives", ["YE"], { ...thin, note: SIZE_FROM_MEMORY }),
    row("2", "not-used", "none", ["BU"], {
      confidence: "disputed",
      note: "Not listed; or a feed with ignition that charges a battery; or spare.",
    }),
    row("3", "ground-constant", "gives", ["WH"], { ...thick, note: `Ground for 4. ${SIZE_FROM_MEMORY}` }),
    row("4", "constant-feed", "gives", ["GN"], { ...thick, note: SIZE_FROM_MEMORY }),
    row("5", "not-used", "none", ["BN"], { note: "Spare; one site has a reversing sensor here." }),
    row("6", "ignition-feed", "gives", ["RD"], { ...thick, note: `Refrigerator. ${SIZE_FROM_MEMORY}` }),
    row("7", "ground-switched", "gives", ["BK"], {
      ...thick,
      confidence: "disputed",
      note: `Ground for 6; spare on older caravans. ${SIZE_FROM_MEMORY}`,
    }),
  ],
};

export const ISO_11446: Pinout = {
  ...common,
  id: "iso-11446",
  title: "ISO 11446 trailer socket, 12 V, 13-pin",
  shell: "ISO 11446",
  source: SOURCE,
  edition: "2012, parts 1 and 2",
  caution: `${PLATE_LAMP} The grounds 3, 11 and 13 must not be joined in the trailer. At least one other colour set for 8 to 13 is in use.`,
  rows: [
    ...LIGHTS.map((item) =>
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
