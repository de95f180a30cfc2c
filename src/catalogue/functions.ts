/**
 * What a conductor is for: one vocabulary for every chart. Rules and matching read these names, never the
 * text on a chart. The words are the trade's; terminal numbers are DIN 72552 where that standard has one.
 */

/** Situations in which a giving contact of the function stands at supply voltage. */
export const LIVE_STATES = [
  "off",
  "accessory",
  "run",
  "crank",
  "lights-on",
  "reverse",
  "brake-on",
  "unit-on",
] as const;
export type LiveState = (typeof LIVE_STATES)[number];

export type FunctionGroup =
  | "feed"
  | "ground"
  | "lighting"
  | "control"
  | "speaker"
  | "line-level"
  | "video"
  | "data"
  | "antenna"
  | "safety"
  | "none";

export type Channel = "front-left" | "front-right" | "rear-left" | "rear-right" | "centre" | "subwoofer";
export type Polarity = "plus" | "minus";

export type WireFunction = {
  readonly id: string;
  /** As a person reads it in a table. */
  readonly name: string;
  readonly group: FunctionGroup;
  readonly liveIn: readonly LiveState[];
  /** What level means "on" for an input of this function. */
  readonly active: "supply" | "ground" | "signal";
  readonly channel: Channel | null;
  readonly polarity: Polarity | null;
  readonly din72552: string | null;
  /** Other words that charts use for it, lower case. */
  readonly synonyms: readonly string[];
};

type Known = Partial<Omit<WireFunction, "id" | "name" | "group">>;

function define(id: string, name: string, group: FunctionGroup, known: Known = {}): WireFunction {
  return {
    id,
    name,
    group,
    liveIn: [],
    active: "signal",
    channel: null,
    polarity: null,
    din72552: null,
    synonyms: [],
    ...known,
  };
}

const plain: readonly WireFunction[] = [
  define("unknown", "not known", "none"),
  define("not-used", "not used", "none", { synonyms: ["not connected", "nc", "n/c", "reserved", "empty"] }),
  define("constant-feed", "constant feed", "feed", {
    liveIn: LIVE_STATES,
    active: "supply",
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
  }),
  define("switched-feed", "switched feed", "feed", {
    liveIn: ["accessory", "run", "unit-on"],
    active: "supply",
    din72552: "15R",
    synonyms: ["acc", "accessory", "switched", "switched 12 v", "s-kontakt", "ignition switched"],
  }),
  define("ignition-feed", "ignition feed", "feed", {
    liveIn: ["run", "crank", "unit-on"],
    active: "supply",
    din72552: "15",
    synonyms: ["ignition", "ign", "kl. 15", "+15", "run"],
  }),
  define("ground", "ground", "ground", {
    active: "ground",
    din72552: "31",
    synonyms: ["gnd", "earth", "mass", "chassis", "negative", "b-", "kl. 31", "0 v"],
  }),
  define("sense-ground", "sense ground", "ground", { active: "ground", synonyms: ["signal ground", "sgnd"] }),
  define("illumination", "illumination", "lighting", {
    liveIn: ["lights-on"],
    active: "supply",
    din72552: "58",
    synonyms: ["illum", "ill", "dash lights", "park lamps", "lights", "kl. 58"],
  }),
  define("dimmer-return", "dimmer return", "lighting", {
    active: "ground",
    din72552: "58d",
    synonyms: ["dimmer", "rheostat"],
  }),
  define("reverse", "reverse", "lighting", {
    liveIn: ["reverse"],
    active: "supply",
    synonyms: ["reversing", "reverse lamp", "back-up lamp", "reverse gear", "rev"],
  }),
  define("stop-lamp", "stop lamp", "lighting", {
    liveIn: ["brake-on"],
    active: "supply",
    din72552: "54",
    synonyms: ["brake lamp", "stop"],
  }),
  define("indicator-left", "left indicator", "lighting", {
    active: "supply",
    din72552: "L",
    synonyms: ["left turn", "turn left"],
  }),
  define("indicator-right", "right indicator", "lighting", {
    active: "supply",
    din72552: "R",
    synonyms: ["right turn", "turn right"],
  }),
  define("tail-left", "left tail lamp", "lighting", {
    liveIn: ["lights-on"],
    active: "supply",
    din72552: "58L",
    synonyms: ["left tail", "left side lamp"],
  }),
  define("tail-right", "right tail lamp", "lighting", {
    liveIn: ["lights-on"],
    active: "supply",
    din72552: "58R",
    synonyms: ["right tail", "right side lamp"],
  }),
  define("fog-rear", "rear fog lamp", "lighting", { active: "supply", synonyms: ["rear fog", "fog"] }),
  define("main-beam", "main beam", "lighting", {
    active: "supply",
    din72552: "56a",
    synonyms: ["high beam"],
  }),
  define("work-lamp", "work lamp", "lighting", { active: "supply", synonyms: ["work light"] }),
  define("ground-lamps", "ground for lamps", "ground", {
    active: "ground",
    din72552: "31",
    synonyms: ["ground 1-8"],
  }),
  define("ground-constant", "ground for constant feed", "ground", {
    active: "ground",
    din72552: "31",
    synonyms: ["ground for 9"],
  }),
  define("ground-switched", "ground for switched feed", "ground", {
    active: "ground",
    din72552: "31",
    synonyms: ["ground for 10"],
  }),
  define("parking-brake", "parking brake", "control", {
    active: "ground",
    synonyms: ["park brake", "handbrake", "hand brake", "pkb", "brake sense"],
  }),
  define("mute", "mute", "control", {
    active: "ground",
    synonyms: ["tel mute", "telephone mute", "phone mute"],
  }),
  define("speed", "vehicle speed", "control", { synonyms: ["speed signal", "vss", "gala", "speed pulse"] }),
  define("amplifier-turn-on", "amplifier turn-on", "control", {
    liveIn: ["unit-on"],
    active: "supply",
    synonyms: ["remote", "rem", "amp remote", "amp on", "amplifier remote", "system remote"],
  }),
  define("antenna-power", "antenna power", "antenna", {
    liveIn: ["unit-on"],
    active: "supply",
    synonyms: ["ant", "aerial", "power antenna", "antenna", "powered aerial"],
  }),
  define("camera-power", "camera power", "control", {
    liveIn: ["reverse", "unit-on"],
    active: "supply",
    synonyms: ["camera supply", "cam +"],
  }),
  define("camera-trigger", "camera trigger", "control", {
    active: "supply",
    synonyms: ["trigger", "reverse trigger"],
  }),
  define("relay-control", "relay control", "control", {
    active: "supply",
    din72552: "86",
    synonyms: ["trigger in", "coil"],
  }),
  define("steering-key-1", "steering-wheel keys 1", "control", {
    synonyms: ["swc 1", "key 1", "steering control 1"],
  }),
  define("steering-key-2", "steering-wheel keys 2", "control", {
    synonyms: ["swc 2", "key 2", "steering control 2"],
  }),
  define("microphone-plus", "microphone +", "line-level", { polarity: "plus", synonyms: ["mic +", "mic"] }),
  define("microphone-minus", "microphone −", "line-level", {
    polarity: "minus",
    synonyms: ["mic -", "mic ground"],
  }),
  define("video-signal", "video signal", "video", {
    polarity: "plus",
    synonyms: ["video", "cvbs", "composite video"],
  }),
  define("video-shield", "video shield", "video", { polarity: "minus", synonyms: ["video ground"] }),
  define("can-high", "CAN high", "data", { polarity: "plus", synonyms: ["can-h", "can h", "can hi"] }),
  define("can-low", "CAN low", "data", { polarity: "minus", synonyms: ["can-l", "can l", "can lo"] }),
  define("lin", "LIN data", "data", { synonyms: ["lin bus"] }),
  define("k-line", "K line", "data", { synonyms: ["k-line", "iso 9141"] }),
  define("data", "data line", "data", { synonyms: ["data", "bus"] }),
  define("antenna-signal", "antenna signal", "antenna", { synonyms: ["rf", "aerial signal"] }),
  define("trailer-brake", "electric trailer brake", "control", {
    active: "supply",
    synonyms: ["electric brake", "brake controller"],
  }),
  define("airbag", "airbag", "safety", { synonyms: ["srs", "squib", "pretensioner"] }),
  define("high-voltage", "high voltage", "safety", { synonyms: ["hv", "traction battery"] }),
];

const CHANNEL_NAMES: Readonly<Record<Channel, string>> = {
  "front-left": "front left",
  "front-right": "front right",
  "rear-left": "rear left",
  "rear-right": "rear right",
  centre: "centre",
  subwoofer: "subwoofer",
};

const SHORT_CHANNELS: Readonly<Record<Channel, readonly string[]>> = {
  "front-left": ["lf", "fl", "left front"],
  "front-right": ["rf", "fr", "right front"],
  "rear-left": ["lr", "rl", "left rear"],
  "rear-right": ["rr", "right rear"],
  centre: ["ctr"],
  subwoofer: ["sub"],
};

function channelFunctions(): WireFunction[] {
  const made: WireFunction[] = [];
  for (const channel of Object.keys(CHANNEL_NAMES) as Channel[]) {
    const name = CHANNEL_NAMES[channel];
    const short = SHORT_CHANNELS[channel];
    for (const [polarity, sign, shield] of [
      ["plus", "+", "signal"],
      ["minus", "−", "shield"],
    ] as const) {
      const written = sign === "−" ? "-" : "+";
      made.push(
        define(`speaker-${channel}-${polarity}`, `speaker ${name} ${sign}`, "speaker", {
          channel,
          polarity,
          synonyms: [name, ...short].map((text) => `${text} ${written}`),
        }),
        define(`line-${channel}-${shield}`, `line level ${name} ${shield}`, "line-level", {
          channel,
          polarity,
          synonyms: [name, ...short].map((text) => `${text} line ${shield}`),
        }),
      );
    }
  }
  return made;
}

/** Every function, in the order in which a menu shows them. */
export const FUNCTIONS: readonly WireFunction[] = [...plain, ...channelFunctions()];

const byId = new Map(FUNCTIONS.map((item) => [item.id, item]));
const UNKNOWN = byId.get("unknown")!;

/** The function of that name; one this version has never heard of reads as "not known". */
export function functionOf(id: string): WireFunction {
  return byId.get(id) ?? UNKNOWN;
}

/** True for both halves of the ground family: what a supply's return may be joined to. */
export function isGround(id: string): boolean {
  return functionOf(id).group === "ground";
}

/** "speaker-front-left-plus" → "speaker-front-left-minus"; `null` for a function without a partner. */
export function partnerOf(id: string): string | null {
  const item = functionOf(id);
  if (!item.polarity) return null;
  const partner = FUNCTIONS.find(
    (other) =>
      other.group === item.group &&
      other.channel === item.channel &&
      other.polarity !== null &&
      other.polarity !== item.polarity &&
      other.id.split("-")[0] === item.id.split("-")[0],
  );
  return partner?.id ?? null;
}
