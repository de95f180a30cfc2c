import { define, SUPPLY, TO_GROUND, type WireFunction } from "./define.ts";

/** Doors, windows, wipers, horn, seats, heating. */
export const BODY: readonly WireFunction[] = [
  define("horn", "horn", "control", "horn feed? plus? signal? relay?", {
    ...SUPPLY,
    synonyms: [],
  }),
  define(
    "horn-switch",
    "horn switch",
    "control",
    "horn switch key? minus? signal? | horn key | horn minus@0.6 | horn ground@0.5",
    {
      ...TO_GROUND,
      synonyms: ["horn button"],
    },
  ),
  define(
    "wiper-low",
    "wiper, low speed",
    "control",
    "wiper low speed? | wiper slow | wiper 1 | wiper@0.5 motor?",
    {
      ...SUPPLY,
      din72552: "53",
      synonyms: ["wiper slow"],
    },
  ),
  define("wiper-high", "wiper, high speed", "control", "wiper high speed? | wiper fast | wiper 2", {
    ...SUPPLY,
    din72552: "53b",
    synonyms: ["wiper fast"],
  }),
  define(
    "wiper-park",
    "wiper park",
    "control",
    "wiper parking signal? switch? | wiper rest | wiper return parking?",
    {
      ...SUPPLY,
      din72552: "53a",
      synonyms: [],
    },
  ),
  define("wiper-interval", "wiper, intermittent", "control", "wiper interval relay?", {
    synonyms: ["wiper delay"],
  }),
  define("wiper-rear", "rear wiper", "control", "wiper rear motor? feed?", { ...SUPPLY, synonyms: [] }),
  define("washer", "windscreen washer", "control", "washer pump? front? motor?", {
    ...SUPPLY,
    din72552: "53c",
    synonyms: ["washer"],
  }),
  define("washer-rear", "rear washer", "control", "washer rear pump? motor?", { ...SUPPLY, synonyms: [] }),
  define(
    "door-lock",
    "lock doors",
    "control",
    "lock door? signal? motor? central? | central lock@0.5 | door close lock",
    { synonyms: ["lock"] },
  ),
  define(
    "door-unlock",
    "unlock doors",
    "control",
    "unlock door? signal? motor? central? lock? | door open lock | central lock@0.5",
    { synonyms: ["unlock"] },
  ),
  define(
    "door-switch",
    "door switch",
    "control",
    "door switch contact? signal? lamp? | door contact signal? | door ajar | door pin | door open signal?@0.7 | door@0.6",
    {
      ...TO_GROUND,
      synonyms: ["door contact"],
    },
  ),
  define(
    "bonnet-switch",
    "bonnet switch",
    "control",
    "hood switch contact? pin? | hood contact | hood pin | hood open? signal?",
    {
      ...TO_GROUND,
      synonyms: ["hood pin"],
    },
  ),
  define(
    "boot-release",
    "boot release",
    "control",
    "boot release signal? motor? | boot open signal? | boot unlock | tailgate release | tailgate open",
    {
      synonyms: ["trunk release"],
    },
  ),
  define(
    "boot-switch",
    "boot switch",
    "control",
    "boot switch contact? lamp? | boot contact | tailgate switch contact? | tailgate contact | boot pin",
    {
      ...TO_GROUND,
      synonyms: ["trunk pin"],
    },
  ),
  define(
    "window-left-up",
    "left window up",
    "control",
    "window left up front? motor? | window driver up | window up@0.5 | window left close",
    { synonyms: [] },
  ),
  define(
    "window-left-down",
    "left window down",
    "control",
    "window left down front? motor? | window driver down | window down@0.5 | window left open",
    { synonyms: [] },
  ),
  define(
    "window-right-up",
    "right window up",
    "control",
    "window right up front? motor? | window passenger up | window up@0.5 | window right close",
    { synonyms: [] },
  ),
  define(
    "window-right-down",
    "right window down",
    "control",
    "window right down front? motor? | window passenger down | window down@0.5 | window right open",
    { synonyms: [] },
  ),
  define("mirror-heater", "mirror heater", "control", "mirror heater feed?", { ...SUPPLY, synonyms: [] }),
  define("mirror-fold", "mirror fold", "control", "mirror fold motor? | mirror motor", { synonyms: [] }),
  define(
    "rear-screen-heater",
    "rear screen heater",
    "control",
    "heater rear screen? | screen heater rear? | defroster rear?",
    {
      ...SUPPLY,
      liveIn: ["run"],
      synonyms: ["defroster"],
    },
  ),
  define("seat-heater", "seat heater", "control", "seat heater feed? switch?", {
    ...SUPPLY,
    liveIn: ["run"],
    synonyms: [],
  }),
  define("blower", "heater blower", "control", "blower motor? fan? feed? heater? | heater fan motor?", {
    ...SUPPLY,
    liveIn: ["run"],
    synonyms: ["fan"],
  }),
  define(
    "cooling-fan",
    "cooling fan",
    "control",
    "fan radiator motor? relay? feed? | fan@0.7 engine? feed? motor? relay? | coolant fan",
    { ...SUPPLY, synonyms: [] },
  ),
  define(
    "compressor-clutch",
    "air-conditioning compressor",
    "control",
    "aircon compressor? clutch? signal? | aircon request signal?",
    {
      ...SUPPLY,
      liveIn: ["run"],
      synonyms: ["a/c clutch"],
    },
  ),
  define(
    "alarm-siren",
    "alarm siren",
    "control",
    "siren alarm? plus? feed? output? | alarm output plus? | alarm@0.6 signal?",
    { ...SUPPLY, synonyms: ["siren"] },
  ),
  define("alarm-led", "alarm LED", "control", "led alarm? | alarm led plus?", { synonyms: [] }),
];
