import { type Pinout, row } from "./pinout.ts";

const SHELL = "7-way round, ISO 1185 / SAE J560";

const MEASURES =
  "An Australian table for this shell has 10 mm² for ground, 6 mm² for 4 and 7, 4 mm² for the rest; European 24 V cable is lighter (from memory). Sizes are left open.";

const common = {
  group: "trailer",
  side: "vehicle",
  form: "housing",
  shell: SHELL,
  face: null,
} as const;

const BY_MEMORY = { confidence: "memory" } as const;

/** The 24 V lighting socket of a lorry. */
export const ISO_1185: Pinout = {
  ...common,
  id: "iso-1185",
  title: "ISO 1185 trailer socket, 24 V, 7-pin type N",
  voltage_V: 24,
  source:
    'A trailer-connector maker\'s standards page "SAE J560"; encyclopaedia article "Trailer connectors in Australia", which gives one table for both. The standard itself was not read.',
  edition: "",
  caution: `The 12 V connector of SAE J560 has the same shape: the two go together and must not, without a converter. ${MEASURES}`,
  rows: [
    row("1", "ground", "gives", ["WH"]),
    row("2", "tail-left", "gives", ["BK"], { ...BY_MEMORY, note: "Left tail and marker lamps." }),
    row("3", "indicator-left", "gives", ["YE"]),
    row("4", "stop-lamp", "gives", ["RD"]),
    row("5", "indicator-right", "gives", ["GN"]),
    row("6", "tail-right", "gives", ["BN"], { ...BY_MEMORY, note: "Right tail and marker lamps." }),
    row("7", "reverse", "gives", ["BU"], {
      confidence: "disputed",
      note: "Reversing lamp, trailer-brake control or a feed with ignition, by source.",
    }),
  ],
};

/** The 12 V socket of North American heavy trailers. */
export const SAE_J560: Pinout = {
  ...common,
  id: "sae-j560",
  title: "SAE J560 trailer socket, 12 V, 7-way, primary",
  voltage_V: 12,
  source:
    'A trailer-connector maker\'s standards page "SAE J560"; a trailer-technician training site\'s glossary, "Trailer 7-Way"; encyclopaedia article "Trailer connectors in Australia". The standard itself was not read.',
  edition: "J560_202002; first 1951",
  caution: `The 24 V connector of ISO 1185 has the same shape: the two go together and must not, without a converter. An auxiliary version, yellow or marked AUX, does not mate with this one. ${MEASURES}`,
  rows: [
    row("1", "ground", "gives", ["WH"]),
    row("2", "marker-lamps", "gives", ["BK"], { note: "Clearance, side marker and number-plate lamps." }),
    row("3", "indicator-left", "gives", ["YE"], { note: "Left turn and hazard." }),
    row("4", "stop-lamp", "gives", ["RD"], { note: "Stop lamps, and anti-lock devices that live on them." }),
    row("5", "indicator-right", "gives", ["GN"], { note: "Right turn and hazard." }),
    row("6", "tail-lamps", "gives", ["BN"], { note: "Tail, clearance and identification lamps." }),
    row("7", "anti-lock-feed", "gives", ["BU"], {
      confidence: "disputed",
      note: "Continuous feed of the trailer's anti-lock brakes; auxiliary or reversing lamp by other sources.",
    }),
  ],
};
