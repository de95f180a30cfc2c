import { define, SUPPLY, TO_GROUND, type WireFunction } from "./define.ts";

const FROM_UNIT = { givenBy: "equipment" } as const;

/** Leads that tell or switch something: for sound, sight and driving. */
export const CONTROLS: readonly WireFunction[] = [
  define(
    "parking-brake",
    "parking brake",
    "control",
    "parking brake switch? signal? sense? minus? | brake sense@0.7 | hand brake switch? signal? | handbrake switch? signal? sense? minus? | handbrake ground signal? switch? | brake@0.2 signal?",
    {
      ...TO_GROUND,
      synonyms: ["park brake", "handbrake", "hand brake", "pkb", "brake sense"],
    },
  ),
  define(
    "mute",
    "mute",
    "control",
    "mute phone? audio? input? signal? radio? enable? minus? | mute ground phone? signal? input? enable? | phone mute | phone@0.4",
    {
      ...TO_GROUND,
      synonyms: ["tel mute", "telephone mute", "phone mute"],
    },
  ),
  define(
    "speed",
    "vehicle speed",
    "control",
    "speed vehicle? signal? pulse? sensor? input? | speedpulse signal? | speed road? sensor? | odometer signal | speedometer signal? | volume speed",
    {
      synonyms: ["speed signal", "vss", "gala", "speed pulse"],
    },
  ),
  define(
    "amplifier-turn-on",
    "amplifier turn-on",
    "control",
    "amplifier turnon feed? signal? volts? control? | amplifier remote turnon? feed? output? volts? | remote turnon amplifier? feed? | amplifier enable signal? | amplifier control feed? | amplifier switched feed? | remote@0.6 output? volts? feed? | system remote | turnon@0.6 output? feed? signal? | sub remote turnon? | sub turnon | amplifier@0.6 | remote amplifier antenna@0.5 | turnon lead?@0.6 | remote control@0.15",
    {
      ...SUPPLY,
      ...FROM_UNIT,
      liveIn: ["unit-on"],
      synonyms: ["remote", "rem", "amp remote", "amp on", "amplifier remote", "system remote"],
    },
  ),
  define(
    "antenna-power",
    "antenna power",
    "antenna",
    "antenna trigger signal? | antenna feed volts? output? amplifier? plus? remote? control? | antenna motor? feed? | electric antenna feed? | antenna remote turnon? | antenna turnon signal? | antenna amplifier feed? | antenna control signal? feed? | antenna@0.75 output? | antenna plus? volts | antenna switched? volts feed? | remote@0.2 output? volts? feed? | remote amplifier antenna@0.5 | turnon@0.2 | antenna booster feed? | automatic antenna feed?",
    {
      ...SUPPLY,
      liveIn: ["unit-on"],
      synonyms: ["ant", "aerial", "power antenna", "antenna", "powered aerial"],
    },
  ),
  define(
    "camera-power",
    "camera power",
    "control",
    "camera feed plus? volts? output? reverse? | camera plus volts? | camera@0.4 reverse? | camera volts feed?",
    {
      ...SUPPLY,
      ...FROM_UNIT,
      liveIn: ["reverse", "unit-on"],
      synonyms: ["camera supply", "cam +"],
    },
  ),
  define(
    "camera-trigger",
    "camera trigger",
    "control",
    "camera trigger signal? reverse? input? | reverse trigger camera? | camera switch signal? reverse? | trigger@0.4 | camera reverse signal sense? switch? | camera control | camera enable | trigger input@0.4",
    {
      ...SUPPLY,
      synonyms: ["trigger", "reverse trigger"],
    },
  ),
  define(
    "remote-control",
    "wired remote control",
    "control",
    "remote control wired? data? signal? | wired remote | remote@0.2 | remote control adapter | ir remote | commander remote?",
    {
      synonyms: ["remote control"],
    },
  ),
  define(
    "steering-key-1",
    "steering-wheel keys 1",
    "control",
    "steering key 1 | steering control 1 | key 1 | steering 1 | steering key@0.5 | steering control@0.5 | steering key a | key a | steering control a | steering key@0.5 remote | steering resistive 1 | steering plus key?@0.6",
    {
      synonyms: ["swc 1", "key 1", "steering control 1"],
    },
  ),
  define(
    "steering-key-2",
    "steering-wheel keys 2",
    "control",
    "steering key 2 | steering control 2 | key 2 | steering 2 | steering key@0.4 | steering control@0.4 | steering key b | key b | steering control b | steering key@0.4 remote | steering resistive 2",
    {
      synonyms: ["swc 2", "key 2", "steering control 2"],
    },
  ),
  define(
    "steering-key-ground",
    "steering-wheel keys return",
    "ground",
    "steering key ground | steering key return | steering control ground | key ground return? | steering ground key? return? | steering key minus | steering control return",
    {
      ...TO_GROUND,
      synonyms: ["swc ground"],
    },
  ),
  define("wake-up", "wake-up", "control", "wake signal? input? | wake turnon", {
    ...SUPPLY,
    synonyms: ["wake"],
  }),
  define("enable", "enable", "control", "enable signal? input? | turnon@0.2 signal?", {
    ...SUPPLY,
    synonyms: [],
  }),
  define(
    "relay-control",
    "relay control",
    "control",
    "relay coil plus? feed? | relay control signal? | relay trigger | coil feed? plus? | trigger@0.3 | trigger input@0.4 | relay coil input? | relay switch signal?",
    {
      ...SUPPLY,
      din72552: "86",
      synonyms: ["trigger in", "coil"],
    },
  ),
  define(
    "relay-coil-return",
    "relay coil return",
    "control",
    "relay coil minus | relay coil ground | coil return | coil ground | coil minus | relay coil output@0.4 | relay coil return",
    {
      ...TO_GROUND,
      din72552: "85",
      synonyms: ["85"],
    },
  ),
  define(
    "relay-common",
    "relay common",
    "control",
    "relay common contact? | common contact relay? | relay contact input | relay contact feed",
    {
      ...SUPPLY,
      synonyms: ["relay common"],
    },
  ),
  define(
    "relay-output",
    "relay output",
    "control",
    "relay output feed? | relay contact makes? output? | normally open contact? | relay load",
    {
      ...SUPPLY,
      din72552: "87",
      synonyms: ["87"],
    },
  ),
  define(
    "relay-output-at-rest",
    "relay output at rest",
    "control",
    "normally closed contact? | relay rest output?",
    {
      ...SUPPLY,
      din72552: "87a",
      synonyms: ["87a"],
    },
  ),
  define(
    "brake-switch",
    "brake pedal switch",
    "control",
    "brake pedal switch signal? | brake switch signal?@0.4",
    { synonyms: [] },
  ),
  define("clutch-switch", "clutch switch", "control", "clutch switch? signal? pedal?", {
    ...TO_GROUND,
    synonyms: ["clutch"],
  }),
  define(
    "neutral-switch",
    "neutral switch",
    "control",
    "neutral switch? signal? gear? lamp? | parking neutral switch?",
    {
      ...TO_GROUND,
      synonyms: ["neutral"],
    },
  ),
  define(
    "tachometer",
    "engine speed",
    "control",
    "rpm signal? sensor? input? output? engine? pulse? | engine speed signal?",
    {
      synonyms: ["tacho", "rpm"],
    },
  ),
  define("cruise-control", "cruise control", "control", "cruise control? set? resume? switch?", {
    synonyms: ["cruise"],
  }),
  define(
    "parking-sensor",
    "parking sensor",
    "control",
    "parking sensor signal? rear? front? | parking assist sensor? signal? | parking distance signal?",
    {
      synonyms: ["park distance"],
    },
  ),
  define("power-take-off", "power take-off", "control", "pto signal? switch? enable? rpm?", {
    synonyms: ["pto"],
  }),
];
