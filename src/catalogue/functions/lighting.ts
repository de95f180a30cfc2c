import { define, SUPPLY, TO_GROUND, type WireFunction } from "./define.ts";

/** Lamps of vehicles and trailers. Terminal numbers: DIN 72552. */
export const LIGHTING: readonly WireFunction[] = [
  define(
    "illumination",
    "illumination",
    "lighting",
    "illumination key? dash? lamp? plus? feed? switch? radio? volts? position? parking? | dash lamp | instrument illumination | instrument lamp | lamp@0.5 plus? | backlight | lamp switched feed@0.3 | illumination dimmer@0.75 | dash illumination dimmer@0.75 | dimmer feed@0.6 | dimmer@0.6 volts? | parking lamp@0.15 | headlamp@0.1 | headlamp volts",
    {
      ...SUPPLY,
      liveIn: ["lights-on"],
      din72552: "58",
      synonyms: ["illum", "ill", "dash lights", "park lamps", "lights", "kl. 58"],
    },
  ),
  define(
    "dimmer-return",
    "dimmer return",
    "lighting",
    "dimmer return | dimmer minus | illumination minus | illumination ground@0.35 | dimmer ground | dimmer control minus? | rheostat | dimmer@0.4 | illumination dimmer@0.25 | illumination return | dash illumination dimmer@0.25",
    { ...TO_GROUND, synonyms: ["dimmer", "rheostat"] },
  ),
  define(
    "reverse",
    "reverse",
    "lighting",
    "reverse lamp? feed? signal? gear? plus? switch? input? | memory lamp signal? feed? | reverse gear signal? | gear reverse sense? | reverse sense signal?",
    {
      ...SUPPLY,
      liveIn: ["reverse"],
      synonyms: ["reversing", "reverse lamp", "back-up lamp", "reverse gear", "rev"],
    },
  ),
  define(
    "stop-lamp",
    "stop lamp",
    "lighting",
    "stop lamp signal? feed? switch? trailer? | brake lamp signal? feed? switch? trailer? | stop signal? | brake@0.65 signal? | brake pedal lamp? switch? signal? | stop brake lamp?",
    { ...SUPPLY, liveIn: ["brake-on"], din72552: "54", synonyms: ["brake lamp", "stop"] },
  ),
  define(
    "stop-lamp-high",
    "high-mounted stop lamp",
    "lighting",
    "third stop lamp | high stop lamp | third brake lamp | high stop lamp | high brake lamp | centre stop lamp | centre brake lamp",
    {
      ...SUPPLY,
      liveIn: ["brake-on"],
      synonyms: ["third stop lamp"],
    },
  ),
  define(
    "indicator-left",
    "left indicator",
    "lighting",
    "indicator left lamp? signal? front? | flasher left lamp? | left signal@0.6 lamp? | indicator left output? | indicator left rear lamp? | indicator@0.5 lamp? signal?",
    {
      ...SUPPLY,
      din72552: "L",
      synonyms: ["left turn", "turn left"],
    },
  ),
  define(
    "indicator-right",
    "right indicator",
    "lighting",
    "indicator right lamp? signal? front? | flasher right lamp? | right signal@0.6 lamp? | indicator right output? | indicator right rear lamp? | indicator@0.5 lamp? signal?",
    {
      ...SUPPLY,
      din72552: "R",
      synonyms: ["right turn", "turn right"],
    },
  ),
  define(
    "stop-turn-left",
    "left stop and turn lamp",
    "lighting",
    "stop indicator left lamp? | brake indicator left lamp? | left stop lamp | left brake lamp@0.7",
    {
      ...SUPPLY,
      liveIn: ["brake-on"],
      synonyms: ["left stop/turn"],
    },
  ),
  define(
    "stop-turn-right",
    "right stop and turn lamp",
    "lighting",
    "stop indicator right lamp? | brake indicator right lamp? | right stop lamp | right brake lamp@0.7",
    {
      ...SUPPLY,
      liveIn: ["brake-on"],
      synonyms: ["right stop/turn"],
    },
  ),
  define("flasher-feed", "flasher output 49a", "lighting", "flasher output feed? | flasher relay output?", {
    ...SUPPLY,
    din72552: "49a",
    synonyms: ["49a"],
  }),
  define("flasher-input", "flasher input 49", "lighting", "flasher input feed? | flasher feed@0.6", {
    ...SUPPLY,
    liveIn: ["run"],
    din72552: "49",
    synonyms: ["49"],
  }),
  define("hazard", "hazard flashers", "lighting", "hazard indicator? lamp? switch? signal? flasher?", {
    synonyms: ["hazard"],
  }),
  define(
    "tail-left",
    "left tail lamp",
    "lighting",
    "tail left lamp? | side left lamp | parking left lamp? | position left lamp? | marker left lamp?@0.6 | tail left position lamp? | tail left lamp? plate | rear left lamp@0.6 | side left tail lamp?",
    {
      ...SUPPLY,
      liveIn: ["lights-on"],
      din72552: "58L",
      synonyms: ["left tail", "left side lamp"],
    },
  ),
  define(
    "tail-right",
    "right tail lamp",
    "lighting",
    "tail right lamp? | side right lamp | parking right lamp? | position right lamp? | marker right lamp?@0.6 | tail right position lamp? | tail right lamp? plate | rear right lamp@0.6 | side right tail lamp?",
    {
      ...SUPPLY,
      liveIn: ["lights-on"],
      din72552: "58R",
      synonyms: ["right tail", "right side lamp"],
    },
  ),
  define(
    "tail-lamps",
    "tail lamps",
    "lighting",
    "tail lamp? run? marker? side? plate? | run lamp marker? tail? | side lamp tail? | position lamp | parking lamp@0.8 feed? | rear lamp@0.7 | lamp@0.15 | marker tail lamp? run? | parking position lamp",
    {
      ...SUPPLY,
      liveIn: ["lights-on"],
      synonyms: ["running lamps", "side lamps"],
    },
  ),
  define("plate-lamp", "number-plate lamp", "lighting", "plate lamp?", {
    ...SUPPLY,
    liveIn: ["lights-on"],
    din72552: "58K",
    synonyms: ["licence-plate lamp"],
  }),
  define("marker-lamps", "marker lamps", "lighting", "marker lamp? side? clearance? | clearance lamp?", {
    ...SUPPLY,
    liveIn: ["lights-on"],
    synonyms: ["clearance lamps"],
  }),
  define("fog-rear", "rear fog lamp", "lighting", "fog rear lamp? | fog tail lamp? | fog@0.75 lamp?", {
    ...SUPPLY,
    synonyms: ["rear fog", "fog"],
  }),
  define("fog-front", "front fog lamp", "lighting", "fog front lamp? | fog@0.25 lamp?", {
    ...SUPPLY,
    din72552: "55",
    synonyms: [],
  }),
  define("low-beam", "low beam", "lighting", "low beam lamp? | low headlamp | headlamp@0.5", {
    ...SUPPLY,
    liveIn: ["lights-on"],
    din72552: "56b",
    synonyms: ["dipped beam"],
  }),
  define(
    "main-beam",
    "main beam",
    "lighting",
    "high beam lamp? signal? indicator? | high headlamp | main headlamp@0.6",
    {
      ...SUPPLY,
      din72552: "56a",
      synonyms: ["high beam"],
    },
  ),
  define(
    "headlamp-feed",
    "headlamp switch output 56",
    "lighting",
    "headlamp@0.5 feed? switch? | headlamp feed",
    {
      ...SUPPLY,
      liveIn: ["lights-on"],
      din72552: "56",
      synonyms: ["headlamps"],
    },
  ),
  define("headlamp-flash", "headlamp flash", "lighting", "headlamp flash | flash beam", {
    ...SUPPLY,
    din72552: "56d",
    synonyms: ["flash to pass"],
  }),
  define("daytime-lamp", "daytime running lamp", "lighting", "daytime run? lamp? signal?", {
    ...SUPPLY,
    liveIn: ["run"],
    synonyms: ["drl"],
  }),
  define(
    "spot-lamp",
    "auxiliary driving lamp",
    "lighting",
    "spot lamp? | auxiliary lamp beam? | auxiliary spot lamp? | driving lamp | lightbar lamp?",
    {
      ...SUPPLY,
      synonyms: ["driving lamp", "spotlight"],
    },
  ),
  define(
    "work-lamp",
    "work lamp",
    "lighting",
    "work lamp rear? front? | flood lamp | scene lamp | deck lamp@0.4 | loading lamp",
    {
      ...SUPPLY,
      synonyms: ["work light"],
    },
  ),
  define(
    "interior-lamp",
    "interior lamp",
    "lighting",
    "interior lamp feed? | dome lamp? | courtesy lamp? | cabin lamp | reading lamp | cargo lamp | reading interior lamp?",
    {
      ...SUPPLY,
      synonyms: ["dome lamp", "courtesy lamp"],
    },
  ),
  define(
    "beacon",
    "warning beacon",
    "lighting",
    "beacon lamp? feed? | strobe lamp? | warning lamp beacon | rotating lamp | warning beacon",
    {
      ...SUPPLY,
      synonyms: ["beacon", "strobe"],
    },
  ),
  define(
    "warning-lamp",
    "tell-tale lamp",
    "lighting",
    "warning lamp | telltale lamp? | oil lamp | check engine lamp? | malfunction lamp",
    {
      synonyms: ["warning lamp", "tell-tale"],
    },
  ),
  define(
    "navigation-lights",
    "navigation lights",
    "lighting",
    "navigation lamp feed? | run navigation lamp | port starboard lamp",
    {
      ...SUPPLY,
      liveIn: ["lights-on"],
      synonyms: ["nav lights"],
    },
  ),
  define("port-light", "port side light", "lighting", "port lamp navigation? side?", {
    ...SUPPLY,
    synonyms: ["red side light"],
  }),
  define("starboard-light", "starboard side light", "lighting", "starboard lamp navigation? side?", {
    ...SUPPLY,
    synonyms: ["green side light"],
  }),
  define("stern-light", "stern light", "lighting", "stern lamp navigation?", { ...SUPPLY, synonyms: [] }),
  define("masthead-light", "steaming light", "lighting", "masthead lamp navigation? | steaming lamp", {
    ...SUPPLY,
    synonyms: ["masthead"],
  }),
  define("anchor-light", "anchor light", "lighting", "anchor lamp?", { ...SUPPLY, synonyms: [] }),
  define("deck-light", "deck light", "lighting", "deck lamp | deck flood | cockpit lamp | spreader lamp", {
    ...SUPPLY,
    synonyms: ["cockpit light"],
  }),
];
