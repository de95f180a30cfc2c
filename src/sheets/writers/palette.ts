import { COLOUR_CODES } from "../../graph/schema/values.ts";
import type { Ink } from "../../layout/drawing.ts";
import { greyOf } from "./colour-math.ts";

/** Two for the screen, two for paper: a colour printer and a black-and-white one. */
export type Theme = "paper" | "workshop" | "print" | "print-grey";

/** The inks that are not a wire's, and `line`, the rule of the editor's tables and panels. */
export type Role = Exclude<Ink, `wire:${string}` | "none"> | "line";

/** Warm greys of paper, one ink, and verdigris, the colour that copper takes with age, for selection and focus. */
export const ROLES: Readonly<Record<Theme, Readonly<Record<Role, string>>>> = {
  paper: {
    ink: "#2a251f",
    quiet: "#665e54",
    paper: "#fbf8f1",
    panel: "#f2ede2",
    line: "#8d8477",
    accent: "#0b6a64",
    danger: "#a3151f",
    fault: "#9c4307",
    weak: "#735700",
    tidy: "#3c5a7a",
  },
  workshop: {
    ink: "#ece6da",
    quiet: "#b3aa9b",
    paper: "#1c1a17",
    panel: "#292621",
    line: "#857c6f",
    accent: "#5fc6bb",
    danger: "#ff8d83",
    fault: "#f4a35c",
    weak: "#dcba45",
    tidy: "#9ebce0",
  },
  print: {
    ink: "#1a1714",
    quiet: "#5a534b",
    paper: "#ffffff",
    panel: "#f7f5f1",
    line: "#847c70",
    accent: "#0b6a64",
    danger: "#a3151f",
    fault: "#9c4307",
    weak: "#735700",
    tidy: "#3c5a7a",
  },
  "print-grey": {
    ink: "#000000",
    quiet: "#4d4d4d",
    paper: "#ffffff",
    panel: "#ffffff",
    line: "#707070",
    accent: "#000000",
    danger: "#000000",
    fault: "#000000",
    weak: "#000000",
    tidy: "#000000",
  },
};

/** What is drawn where nobody has stated the colour of a wire. */
export const UNKNOWN_PIGMENT = "#d9d0be";

/**
 * Pigments of the IEC 60757 letter codes, chosen by us for telling them apart on light and dark ground; that
 * standard names colours and gives no values. A wire is the same colour by day and by night: its outline, in
 * ink, carries the contrast.
 */
export const PIGMENTS: Readonly<Record<(typeof COLOUR_CODES)[number], string>> = {
  BK: "#1d1b19",
  BN: "#74451e",
  RD: "#d1261d",
  OG: "#f27d12",
  YE: "#f7d61c",
  GN: "#2c9a3a",
  BU: "#1f63c2",
  VT: "#7b3da3",
  GY: "#7f8286",
  WH: "#ffffff",
  PK: "#f39bb7",
  GD: "#bf9530",
  TQ: "#27b4b2",
  SR: "#bcc5cd",
  GNYE: "#2c9a3a",
};

/** The stripe that a code implies by itself: protective earth is green with yellow. `null` for all others. */
export function impliedTracer(code: string): "YE" | null {
  return code === "GNYE" ? "YE" : null;
}

/**
 * The colour value of an ink.
 * @returns "#rrggbb"; null for "none"; for a letter code that IEC 60757 lacks, the pigment of an unknown colour
 */
export function resolveInk(ink: Ink, theme: Theme): string | null {
  if (ink === "none") return null;
  if (!isWire(ink)) return ROLES[theme][ink];
  const code = COLOUR_CODES.find((known) => ink === `wire:${known}`);
  const pigment = code === undefined ? UNKNOWN_PIGMENT : PIGMENTS[code];
  return theme === "print-grey" ? greyOf(pigment) : pigment;
}

function isWire(ink: Ink): ink is `wire:${string}` {
  return ink.startsWith("wire:");
}
