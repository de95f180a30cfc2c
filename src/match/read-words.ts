import { readColour } from "../catalogue/colours.ts";
import { AWG_NAMES, METRIC_SIZES_mm2, readSize } from "../catalogue/conductors.ts";
import { type Channel, FUNCTIONS } from "../catalogue/functions.ts";
import type { Colour, ColourCode } from "../graph/harness.ts";

/** Lower case, no accents, one kind of minus, single blanks: how words of charts are compared. */
export function plainWords(text: string): string {
  return text
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[−–—‐‑]/g, "-")
    .replace(/[_\s]+/g, " ")
    .trim();
}

const EXACT: ReadonlyMap<string, string> = new Map(
  FUNCTIONS.flatMap((item) => {
    const words = [item.id, item.name, ...item.synonyms];
    // A terminal of one letter (R, L) is read as a side far more often.
    if (item.din72552 && item.din72552.length > 1) words.push(item.din72552);
    return words.map((word): [string, string] => [plainWords(word), item.id]);
  }).reverse(),
);

/** Phrases that may stand inside a longer text, longest first, so that "sense ground" is not read as "ground". */
const PHRASES: readonly (readonly [string, string])[] = [...EXACT]
  .filter(([word]) => word.length > 2 && /[a-z]{3}/.test(word) && EXACT.get(word) !== "unknown")
  .sort((a, b) => b[0].length - a[0].length);

/**
 * Reads what a conductor is for from a chart's words.
 * @returns the id of a function of the catalogue; `null` where the words fit none, or more than one: a wrong
 * guess is worse than a question
 */
export function readFunction(text: string): string | null {
  const plain = plainWords(text);
  if (plain === "") return null;
  const exact = EXACT.get(plain) ?? EXACT.get(plain.replace(/^\(?(.*?)\)?$/, "$1"));
  if (exact && exact !== "unknown") return exact;
  const channel = readChannel(plain);
  if (channel) return channel;
  return readPhrase(plain);
}

function readPhrase(plain: string): string | null {
  let left = plain;
  const found = new Set<string>();
  for (const [phrase, id] of PHRASES) {
    if (!holdsPhrase(left, phrase)) continue;
    found.add(id);
    left = left.replace(phrase, " · ");
  }
  const [only] = found;
  return found.size === 1 && only !== undefined ? only : null;
}

function holdsPhrase(text: string, phrase: string): boolean {
  const at = text.indexOf(phrase);
  if (at < 0) return false;
  const before = text[at - 1] ?? " ";
  const after = text[at + phrase.length] ?? " ";
  return !/[a-z0-9]/.test(before) && !/[a-z0-9]/.test(after);
}

const POSITIONS: Readonly<Record<string, "front" | "rear" | "left" | "right">> = {
  front: "front",
  f: "front",
  rear: "rear",
  left: "left",
  l: "left",
  lh: "left",
  right: "right",
  rh: "right",
};
const PAIRS: Readonly<Record<string, Channel>> = {
  fl: "front-left",
  lf: "front-left",
  fr: "front-right",
  rf: "front-right",
  rl: "rear-left",
  lr: "rear-left",
  rr: "rear-right",
};
const POLARITIES: Readonly<Record<string, "plus" | "minus">> = {
  "+": "plus",
  plus: "plus",
  pos: "plus",
  positive: "plus",
  "-": "minus",
  minus: "minus",
  neg: "minus",
  negative: "minus",
};
const NOISE = new Set([
  "speaker",
  "speakers",
  "spk",
  "spkr",
  "sp",
  "loudspeaker",
  "out",
  "output",
  "channel",
]);
const LINE = new Set(["line", "rca", "pre-out", "preout", "preamp"]);

/** "FL+", "Front left speaker (-)", "Spk RR pos", "line out front left": a channel and its polarity. */
function readChannel(plain: string): string | null {
  const spaced = plain
    .replace(/pre-out/g, "preout")
    .replace(/[()/.,:]/g, " ")
    .replace(/([+-])/g, " $1 ")
    .split(" ")
    .filter(Boolean);
  let end: "front" | "rear" | null = null;
  let side: "left" | "right" | null = null;
  let whole: Channel | null = null;
  let polarity: "plus" | "minus" | null = null;
  let line = false;
  for (const word of spaced) {
    const position = POSITIONS[word];
    if (PAIRS[word] && !whole) whole = PAIRS[word];
    else if ((position === "front" || position === "rear") && !end) end = position;
    else if ((position === "left" || position === "right") && !side) side = position;
    else if (POLARITIES[word] && !polarity) polarity = POLARITIES[word];
    else if (word === "subwoofer" || word === "sub") whole = "subwoofer";
    else if (word === "centre" || word === "center") whole = "centre";
    else if (LINE.has(word)) line = true;
    else if ((word === "signal" || word === "shield") && !polarity) {
      polarity = word === "signal" ? "plus" : "minus";
      line = true;
    } else if (!NOISE.has(word)) return null;
  }
  const channel = whole ?? (end && side ? (`${end}-${side}` as const) : null);
  if (!channel || !polarity) return null;
  if (line) return `line-${channel}-${polarity === "plus" ? "signal" : "shield"}`;
  return `speaker-${channel}-${polarity}`;
}

/** Short forms of English colour words; each stands for one colour only (from memory). */
const SHORT: Readonly<Record<string, ColourCode>> = {
  blk: "BK",
  brn: "BN",
  org: "OG",
  orn: "OG",
  yel: "YE",
  ylw: "YE",
  grn: "GN",
  blu: "BU",
  vio: "VT",
  vlt: "VT",
  pur: "VT",
  ppl: "VT",
  gry: "GY",
  gra: "GY",
  wht: "WH",
  whi: "WH",
  pnk: "PK",
};

/** Reads a chart's colour: letters, words, or short words ("BLU/WHT"). `null` where it could be two colours. */
export function readChartColour(text: string): Colour | null {
  const known = readColour(text);
  if (known) return known;
  const words = plainWords(text)
    .split(/[\s/,+-]+/)
    .filter((word) => word !== "" && word !== "with" && word !== "stripe" && word !== "tracer");
  if (words.length === 0 || words.length > 2) return null;
  const codes = words.map((word) => SHORT[word] ?? readColour(word)?.base ?? null);
  const [base, tracer] = codes;
  if (!base || tracer === null) return null;
  return { base, tracer: tracer ?? null };
}

export { readSize };

/** True where a text is a size by its own writing or one that is stocked: a bare "4" may be anything. */
export function looksLikeSize(text: string): boolean {
  const plain = plainWords(text);
  if (/(mm|awg|ga$|^#)/.test(plain)) return readSize(plain, "metric") !== null;
  const value = Number(plain.replace(",", "."));
  if (!(value > 0)) return false;
  return METRIC_SIZES_mm2.some((size) => size === value) || AWG_NAMES.some((name) => name === plain);
}
