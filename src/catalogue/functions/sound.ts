import { type Channel, define, type WireFunction } from "./define.ts";

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

const IDEAS: Readonly<Record<Channel, string>> = {
  "front-left": "front left",
  "front-right": "front right",
  "rear-left": "rear left",
  "rear-right": "rear right",
  centre: "centre",
  subwoofer: "sub",
};

/** Wordings that name only a side or an end fit two channels; only a polarity, all of them. */
function looser(channel: Channel, polarity: "plus" | "minus"): string {
  if (channel === "centre" || channel === "subwoofer") return `speaker ${polarity}@0.02`;
  const [end, side] = channel.split("-") as [string, string];
  // A two-channel set has only a left and a right, and they are mostly the front pair.
  const share = end === "front" ? 0.55 : 0.45;
  return `speaker ${side} ${polarity}@${share} | ${side} ${polarity}@${share} | speaker ${end} ${polarity}@0.5 | speaker ${side}@${share / 2} | speaker ${polarity}@0.2`;
}

function channelFunctions(): WireFunction[] {
  const made: WireFunction[] = [];
  for (const channel of Object.keys(CHANNEL_NAMES) as Channel[]) {
    const name = CHANNEL_NAMES[channel];
    const ideas = IDEAS[channel];
    const short = SHORT_CHANNELS[channel];
    const isSub = channel === "subwoofer";
    for (const [polarity, sign, shield] of [
      ["plus", "+", "signal"],
      ["minus", "−", "shield"],
    ] as const) {
      const written = sign === "−" ? "-" : "+";
      made.push(
        define(
          `speaker-${channel}-${polarity}`,
          `speaker ${name} ${sign}`,
          "speaker",
          `speaker? ${ideas} ${polarity} output? input? level? high? door? channel? bridged? signal? radio? | speaker? ${ideas}@${isSub ? 0.3 : 0.5} output? channel? door? | ${looser(channel, polarity)}`,
          {
            channel,
            polarity,
            synonyms: [name, ...short].map((text) => `${text} ${written}`),
          },
        ),
        define(
          `line-${channel}-${shield}`,
          `line level ${name} ${shield}`,
          "line-level",
          shield === "signal"
            ? `line ${ideas} plus? signal? output? input? low? level? channel? audio? core? | line ${ideas}@0.9 output? input? | line signal ${ideas} | ${isSub ? "sub@0.4 output? | sub line output?" : `line ${channel.split("-")[1] ?? "centre"}@0.5 plus? output?`}`
            : `line ${ideas} minus output? | line ${ideas} shield | line ${ideas} ground output? signal? | line ${ideas}@0.1 | ${ideas} shield@0.5 | ${isSub ? "sub shield | sub ground@0.6" : `line ${channel.split("-")[1] ?? "centre"} shield@0.5 | line ${channel.split("-")[1] ?? "centre"} minus@0.5`}`,
          {
            channel,
            polarity,
            synonyms: [name, ...short].map((text) => `${text} line ${shield}`),
          },
        ),
      );
    }
  }
  return made;
}

const PLUS = { polarity: "plus" } as const;
const MINUS = { polarity: "minus" } as const;

/** Loudspeakers, line level, microphone. */
export const SOUND: readonly WireFunction[] = [
  define(
    "microphone-plus",
    "microphone +",
    "line-level",
    "mic plus signal? input? phone? | mic signal input? | mic@0.7 input? signal? phone? | mic feed",
    {
      ...PLUS,
      givenBy: "either",
      synonyms: ["mic +", "mic"],
    },
  ),
  define(
    "microphone-minus",
    "microphone −",
    "line-level",
    "mic@0.3 | mic minus signal? input? phone? | mic ground | mic return | mic shield@0.5",
    {
      ...MINUS,
      givenBy: "either",
      synonyms: ["mic -", "mic ground"],
    },
  ),
  define("microphone-shield", "microphone shield", "ground", "mic shield | mic drain | mic ground shield", {
    active: "ground",
    givenBy: "equipment",
    synonyms: [],
  }),
  define(
    "aux-left",
    "auxiliary sound in, left",
    "line-level",
    "auxiliary left audio? input? plus? line? signal? | changer left audio? plus? input? line? signal? | audio left auxiliary? input? plus? signal? | line input left plus?@0.4",
    { givenBy: "either", synonyms: ["aux l"] },
  ),
  define(
    "aux-right",
    "auxiliary sound in, right",
    "line-level",
    "auxiliary right audio? input? plus? line? signal? | changer right audio? plus? input? line? signal? | audio right auxiliary? input? plus? signal? | line input right plus?@0.4",
    { givenBy: "either", synonyms: ["aux r"] },
  ),
  define(
    "aux-ground",
    "auxiliary sound in, ground",
    "ground",
    "auxiliary ground audio? input? | auxiliary minus audio? input? | changer ground audio? | auxiliary shield | changer audio ground | auxiliary common",
    { active: "ground", givenBy: "either", synonyms: ["aux gnd"] },
  ),
  define(
    "phone-plus",
    "telephone sound in +",
    "line-level",
    "phone plus audio? input? | phone audio plus? input? | phone input plus? signal?",
    { ...PLUS, givenBy: "either", synonyms: ["phone in +"] },
  ),
  define(
    "phone-minus",
    "telephone sound in −",
    "line-level",
    "phone minus audio? input? | phone audio minus input? | phone input minus | phone ground audio?",
    { ...MINUS, givenBy: "either", synonyms: ["phone in -"] },
  ),
  ...channelFunctions(),
];
