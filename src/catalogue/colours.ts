import type { Colour, ColourCode } from "../graph/harness.ts";

/** IEC 60757 letter codes with the words for them. GN and YE together only as GNYE (protective earth). */
export const COLOUR_NAMES: Readonly<Record<ColourCode, string>> = {
  BK: "black",
  BN: "brown",
  RD: "red",
  OG: "orange",
  YE: "yellow",
  GN: "green",
  BU: "blue",
  VT: "violet",
  GY: "grey",
  WH: "white",
  PK: "pink",
  GD: "gold",
  TQ: "turquoise",
  SR: "silver",
  GNYE: "green-and-yellow",
};

/** "BU/WH": base, then tracer. The slash is ours: IEC 60757 alone does not say which is the base. "" if unknown. */
export function writeColour(colour: Colour | null): string {
  if (!colour) return "";
  return colour.tracer ? `${colour.base}/${colour.tracer}` : colour.base;
}

/** "blue with a white tracer": for sentences and screen readers. */
export function sayColour(colour: Colour | null): string {
  if (!colour) return "colour not stated";
  const base = COLOUR_NAMES[colour.base];
  return colour.tracer ? `${base} with a ${COLOUR_NAMES[colour.tracer]} tracer` : base;
}

const TOKENS: ReadonlyMap<string, ColourCode> = new Map([
  ...(Object.keys(COLOUR_NAMES) as ColourCode[]).map((code): [string, ColourCode] => [
    code.toLowerCase(),
    code,
  ]),
  ...(Object.entries(COLOUR_NAMES) as [ColourCode, string][]).map(([code, name]): [string, ColourCode] => [
    name,
    code,
  ]),
  ["purple", "VT"],
  ["gray", "GY"],
  ["slate", "GY"],
]);

/**
 * Reads a colour as a person types it: "BU/WH", "blue/white", "blue with white", "RD". The first is the base.
 * Ambiguous single letters are not read: "B" is black on one chart and blue on another.
 * @returns the colour, or `null` where it cannot be read
 */
export function readColour(text: string): Colour | null {
  const words = text
    .trim()
    .toLowerCase()
    .replace(/\bgreen[- ]and[- ]yellow\b/g, "gnye")
    .split(/\s*(?:\/|-|\+|,|\bwith(?: a)?\b|\bstripe\b|\btracer\b|\s)\s*/)
    .filter((word) => word !== "");
  if (words.length === 0 || words.length > 2) return null;
  const base = TOKENS.get(words[0]!);
  const tracer = words[1] === undefined ? null : TOKENS.get(words[1]);
  if (!base || tracer === undefined) return null;
  return { base, tracer };
}
