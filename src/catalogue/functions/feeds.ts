import { define, LIVE_STATES, SUPPLY, TO_GROUND, type WireFunction } from "./define.ts";

/** Feeds and what charges the battery. Terminal numbers: DIN 72552. */
export const FEEDS: readonly WireFunction[] = [
  define(
    "constant-feed",
    "constant feed",
    "feed",
    "constant feed? battery? volts? fused? plus? | battery feed? volts? fused? | battery plus | memory feed? volts? constant? battery? | clock memory? feed? | volts@0.5 feed? | feed@0.5 | bplus@0.85 volts? | plus@0.3 | battery accessory?@0.1 | constant memory | fused battery | main feed@0.6 plus? | constant fused? feed",
    {
      ...SUPPLY,
      liveIn: LIVE_STATES,
      din72552: "30",
      synonyms: [
        "battery",
        "batt",
        "b+",
        "permanent",
        "permanent 12 v",
        "memory",
        "constant",
        "constant 12 v",
        "+30",
        "kl. 30",
        "back-up",
      ],
    },
  ),
  define(
    "switched-feed",
    "switched feed",
    "feed",
    "accessory feed? switched? ignition? volts? fused? plus? | switched feed? volts? plus? fused? | switched ignition feed? volts? | radio feed@0.5 | volts@0.4 feed? | feed@0.4 | ignition@0.35 feed? volts? fused? plus? | key@0.4 feed? | plus@0.3",
    {
      ...SUPPLY,
      liveIn: ["accessory", "run", "unit-on"],
      din72552: "15R",
      synonyms: ["acc", "accessory", "switched", "switched 12 v", "s-kontakt", "ignition switched"],
    },
  ),
  define(
    "ignition-feed",
    "ignition feed",
    "feed",
    "ignition@0.65 feed? volts? fused? plus? | ignition run feed? volts? | run feed? volts? | ignition start@0.9 run? | key@0.4 feed? | volts@0.1 feed? | feed@0.1 | run start feed? ignition? accessory? | ignition coil@0.3 feed?",
    {
      ...SUPPLY,
      liveIn: ["run", "crank", "unit-on"],
      din72552: "15",
      synonyms: ["ignition", "ign", "kl. 15", "+15", "run"],
    },
  ),
  define(
    "run-feed",
    "feed off while cranking",
    "feed",
    "run feed? notstart volts? | feed notstart | ignition notstart feed? | accessory notstart",
    { ...SUPPLY, liveIn: ["run"], synonyms: ["15x", "load-relieved feed"] },
  ),
  define(
    "delayed-feed",
    "feed with run-on",
    "feed",
    "delayed feed? accessory? volts? | retained accessory feed? volts? | delayed accessory",
    { ...SUPPLY, liveIn: ["accessory", "run", "unit-on"], synonyms: ["retained accessory power"] },
  ),
  define(
    "starter-signal",
    "starter signal",
    "feed",
    "start signal? feed? | starter signal? feed? solenoid? | start starter | start motor | ignition start@0.1",
    { ...SUPPLY, liveIn: ["crank"], din72552: "50", synonyms: ["crank", "start"] },
  ),
  define(
    "second-battery-feed",
    "feed from second battery",
    "feed",
    "second battery feed? plus? | leisure battery feed? plus? | house battery feed? plus? | auxiliary battery feed? plus?",
    { ...SUPPLY, liveIn: LIVE_STATES, din72552: "30a", synonyms: ["leisure battery", "house battery"] },
  ),
  define(
    "amplifier-feed",
    "amplifier feed",
    "feed",
    "amplifier feed plus? volts? constant? battery? | amplifier battery plus? | amplifier plus@0.5 volts? | amplifier@0.35 volts? plus?",
    { ...SUPPLY, liveIn: LIVE_STATES, synonyms: ["amp power"] },
  ),
  define("refrigerator-feed", "refrigerator feed", "feed", "refrigerator feed? volts? switched? plus?", {
    ...SUPPLY,
    liveIn: ["run"],
    synonyms: ["fridge"],
  }),
  define(
    "trailer-charge",
    "trailer battery charge",
    "feed",
    "trailer charge feed? battery? | charge line feed?@0.7 battery? | trailer battery feed? | caravan battery charge? feed? | charge feed@0.6 | battery charge@0.5 | auxiliary charge feed? | charge battery trailer? auxiliary? feed? plus?",
    { ...SUPPLY, liveIn: LIVE_STATES, synonyms: ["charge line"] },
  ),
  define(
    "power-socket-feed",
    "power socket feed",
    "feed",
    "lighter feed? plus? socket? volts? | socket feed volts? plus? | socket volts plus?",
    { ...SUPPLY, liveIn: ["accessory", "run"], synonyms: ["lighter socket"] },
  ),
  define(
    "usb-power",
    "USB +5 V",
    "feed",
    "usb feed plus? volts5? | usb plus@0.4 | usb volts5 plus? | vbus usb? volts5?",
    { ...SUPPLY, liveIn: ["unit-on"], givenBy: "equipment", synonyms: ["vbus"] },
  ),
  define(
    "sensor-supply",
    "sensor supply +5 V",
    "feed",
    "sensor feed volts5? reference? | volts5 reference? feed? | reference volts | sensor reference volts5?",
    { ...SUPPLY, liveIn: ["run", "crank"], givenBy: "equipment", synonyms: ["5 v reference"] },
  ),
  define(
    "alternator-output",
    "alternator output B+",
    "feed",
    "alternator output? plus? feed? | alternator bplus feed? | bplus@0.15",
    { ...SUPPLY, liveIn: LIVE_STATES, din72552: "B+", synonyms: ["alternator"] },
  ),
  define(
    "alternator-lamp",
    "charge-lamp signal D+",
    "control",
    "alternator lamp charge? | charge lamp signal? alternator? | dplus alternator? signal? | alternator exciter signal? | exciter | alternator run signal | alternator dplus | engine run signal",
    { ...SUPPLY, liveIn: ["run"], din72552: "D+", synonyms: ["d+", "charge lamp"] },
  ),
  define("alternator-field", "alternator field", "control", "alternator field | field | dfield", {
    din72552: "DF",
    synonyms: ["field", "df"],
  }),
  define("alternator-phase", "alternator phase W", "control", "alternator phase | alternator rpm", {
    din72552: "W",
    synonyms: [""],
  }),
  define(
    "battery-sense",
    "battery sense",
    "control",
    "battery sense plus? | volts sense | alternator sense | battery volts sense",
    { ...SUPPLY, synonyms: ["voltage sense"] },
  ),
  define("charge-enable", "charge enable", "control", "charge enable signal? | charge wake | charge turnon", {
    ...SUPPLY,
    liveIn: ["run"],
    synonyms: ["charger enable"],
  }),
  define("glow-plug", "glow plug feed", "feed", "glow feed? relay?", {
    ...SUPPLY,
    din72552: "19",
    synonyms: ["preheat"],
  }),
  define("fuel-pump", "fuel pump", "control", "fuel pump feed? relay? plus? | fuel pump motor", {
    ...SUPPLY,
    liveIn: ["run", "crank"],
    synonyms: [],
  }),
  define("ignition-coil", "ignition coil", "control", "ignition coil minus? plus? | coil ignition 1", {
    din72552: "1",
    synonyms: ["coil negative"],
  }),
  define(
    "ignition-cut",
    "engine stop",
    "control",
    "stop engine | stop@0.1 | kill engine? ignition? | stop magneto | immobiliser | cut ignition | starter kill",
    {
      ...TO_GROUND,
      din72552: "2",
      synonyms: ["kill", "immobiliser"],
    },
  ),
];

/** What current comes back by. */
export const GROUNDS: readonly WireFunction[] = [
  define(
    "ground",
    "ground",
    "ground",
    "ground minus? battery? chassis? feed? volts? main? return? body? common? | chassis minus? | battery minus | minus@0.5 volts? | zerovolts | feed minus | engine ground | ground plus@0.1",
    {
      ...TO_GROUND,
      din72552: "31",
      synonyms: ["gnd", "earth", "mass", "chassis", "negative", "b-", "kl. 31", "0 v"],
    },
  ),
  define(
    "sense-ground",
    "sense ground",
    "ground",
    "signal ground sense? minus? | sense ground sensor? | sensor ground signal? minus? | ground reference | data ground",
    {
      ...TO_GROUND,
      synonyms: ["signal ground", "sgnd"],
    },
  ),
  define(
    "audio-ground",
    "audio ground",
    "ground",
    "audio ground signal? line? | line ground | sound ground signal? | common audio minus? | common line",
    {
      ...TO_GROUND,
      givenBy: "equipment",
      synonyms: ["line ground"],
    },
  ),
  define("shield-drain", "shield drain", "ground", "shield drain? ground? | drain wire?", {
    ...TO_GROUND,
    givenBy: "equipment",
    synonyms: ["screen", "drain"],
  }),
  define(
    "ground-lamps",
    "ground for lamps",
    "ground",
    "lamp ground | ground 1 8 | trailer ground lamp | ground 1 7 | ground lamp tail? 1? 8?",
    {
      ...TO_GROUND,
      din72552: "31",
      synonyms: ["ground 1-8"],
    },
  ),
  define(
    "ground-constant",
    "ground for constant feed",
    "ground",
    "ground constant feed? | ground 9 contact? | ground battery constant",
    {
      ...TO_GROUND,
      din72552: "31",
      synonyms: ["ground for 9"],
    },
  ),
  define(
    "ground-switched",
    "ground for switched feed",
    "ground",
    "ground switched feed? | ground 10 contact? | ground ignition feed? | ground charge feed?",
    {
      ...TO_GROUND,
      din72552: "31",
      synonyms: ["ground for 10"],
    },
  ),
  define("camera-ground", "camera ground", "ground", "camera ground feed? | camera minus feed?", {
    ...TO_GROUND,
    givenBy: "equipment",
    synonyms: [],
  }),
  define(
    "amplifier-ground",
    "amplifier ground",
    "ground",
    "amplifier ground feed? minus? | amplifier minus@0.4",
    {
      ...TO_GROUND,
      synonyms: ["amp ground"],
    },
  ),
  define("usb-ground", "USB ground", "ground", "usb ground minus? | usb minus@0.4", {
    ...TO_GROUND,
    givenBy: "equipment",
    synonyms: [],
  }),
  define("antenna-ground", "antenna ground", "ground", "antenna ground | antenna shield", {
    ...TO_GROUND,
    synonyms: ["aerial ground"],
  }),
  define(
    "second-battery-ground",
    "ground of second battery",
    "ground",
    "second battery ground | second battery minus | leisure battery ground | leisure battery minus | house battery minus | house battery ground",
    {
      ...TO_GROUND,
      din72552: "31a",
      synonyms: [],
    },
  ),
];
