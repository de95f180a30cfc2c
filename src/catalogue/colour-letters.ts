import type { ColourCode } from "../graph/harness.ts";
import type { LanguageName, NamedColour } from "./colour-words.ts";

/**
 * One custom of writing colours in letters. A letter code that stands under two colours may be either. A code with
 * "~" is a lighter or darker shade of its colour.
 */
export type ColourCustom = {
  readonly name: string;
  /** Words of this language in a chart speak for the custom. */
  readonly language: LanguageName | null;
  readonly letters: Readonly<Partial<Record<NamedColour, string>>>;
};

/** The codes of IEC 60757 as letters in lower case; GNYE is one code and not made of two. */
export const IEC_LETTERS: Readonly<Record<Exclude<ColourCode, "GNYE">, string>> = {
  BK: "bk",
  BN: "bn",
  RD: "rd",
  OG: "og",
  YE: "ye",
  GN: "gn",
  BU: "bu",
  VT: "vt",
  GY: "gy",
  WH: "wh",
  PK: "pk",
  GD: "gd",
  TQ: "tq",
  SR: "sr",
};

/**
 * Customs of letters, the likelier first.
 * @source IEC 60757 letters: GOST 28763-90, the adoption of IEC 757:1983. German: published tables of DIN and VDE
 * letters. Japanese and Swedish style: wire-colour pages of vehicle workshop manuals; L for blue, from memory.
 * British, North American, French, Spanish, Italian and Dutch: common practice, from memory.
 */
export const COLOUR_CUSTOMS: readonly ColourCustom[] = [
  { name: "IEC 60757 letters", language: null, letters: IEC_LETTERS },
  {
    name: "North American letters",
    language: "english",
    letters: {
      BK: "bk b bl",
      BN: "bn br",
      RD: "rd r",
      OG: "og or o",
      YE: "ye yl y",
      GN: "gn g gr lg~ dg~ lgn~ dgn~",
      BU: "bu bl lb~ db~ lbu~ dbu~ lbl~ dbl~",
      VT: "vt v pu p pr",
      GY: "gy gr",
      WH: "wh wt w",
      PK: "pk p",
      GD: "gd",
      SR: "sr",
      none: "tn t",
    },
  },
  {
    name: "German letters",
    language: "german",
    letters: {
      BK: "sw",
      BN: "br",
      RD: "rt ro",
      OG: "or",
      YE: "ge",
      GN: "gn hgn~ dgn~",
      BU: "bl hb~ lb~ hbl~ dbl~",
      VT: "vi li",
      GY: "gr hgr~ dgr~",
      WH: "ws",
      PK: "rs ro",
      GD: "go gd",
      TQ: "tk ts",
      SR: "si",
      none: "be bg tr nt el",
    },
  },
  {
    name: "Japanese-style letters",
    language: "english",
    letters: {
      BK: "b",
      BN: "br",
      RD: "r",
      OG: "o or",
      YE: "y",
      GN: "g lg~ dg~",
      BU: "l bl sb~ lbl~ db~",
      VT: "v pu",
      GY: "gr gy",
      WH: "w",
      PK: "p",
      SR: "si",
      none: "be t bg",
    },
  },
  {
    name: "British letters",
    language: "english",
    letters: {
      BK: "b",
      BN: "n ln~",
      RD: "r lr~",
      OG: "o lo~",
      YE: "y ly~",
      GN: "g lg~",
      BU: "u lu~",
      VT: "p lp~",
      GY: "s ls~",
      WH: "w",
      PK: "k",
    },
  },
  {
    name: "French letters",
    language: "french",
    letters: {
      BK: "n",
      BN: "m",
      RD: "r",
      OG: "o or",
      YE: "j",
      GN: "v",
      BU: "be bl",
      VT: "vi mv",
      GY: "g",
      WH: "b",
      PK: "ro rs",
      none: "bg ic",
    },
  },
  {
    name: "French two-letter codes",
    language: "french",
    letters: {
      BK: "no nr",
      BN: "ma mr mn",
      RD: "rg rge",
      OG: "or",
      YE: "ja jn",
      GN: "ve vr vt",
      BU: "be bl",
      VT: "vi",
      GY: "gr",
      WH: "ba bc",
      PK: "rs",
      none: "bj bg cy sa",
    },
  },
  {
    name: "Italian letters",
    language: "italian",
    letters: {
      BK: "n",
      BN: "m",
      RD: "r",
      OG: "c",
      YE: "g",
      GN: "v",
      BU: "l a~",
      VT: "z",
      GY: "h",
      WH: "b",
      PK: "s",
    },
  },
  {
    name: "Spanish two-letter codes",
    language: "spanish",
    letters: {
      BK: "ne",
      BN: "ma mr",
      RD: "ro rj",
      OG: "na",
      YE: "am",
      GN: "ve vd",
      BU: "az",
      VT: "vi mo",
      GY: "gr",
      WH: "bl bc",
      PK: "rs",
    },
  },
  {
    name: "Swedish-style letters",
    language: null,
    letters: {
      BK: "sb",
      BN: "bn br",
      RD: "r",
      OG: "or",
      YE: "y",
      GN: "gn",
      BU: "bl",
      VT: "v vo",
      GY: "gr",
      WH: "w",
      PK: "p",
    },
  },
  {
    name: "Dutch letters",
    language: "dutch",
    letters: {
      BK: "zw",
      BN: "br",
      RD: "rd ro",
      OG: "or",
      YE: "gl ge",
      GN: "gn gr",
      BU: "bl",
      VT: "pa ps",
      GY: "gs gr",
      WH: "wt wi",
      PK: "rz",
    },
  },
];

/** Codes that are ordinary words or abbreviations too: they speak for no custom, but one that is chosen reads them. */
export const WEAK_LETTERS = "no na am be or ma tr go ts el";

/** Codes of one colour that are often two colours' letters as well: black with red. */
export const PAIR_TOO_LETTERS = "br";

/** Letter codes that are read alone in a line of other words; the other customs' codes mean other things there too. */
export const LINE_LETTERS = "bk bn rd og ye gn bu vt gy wh pk";

/** Pairs of letters that are other things in a line: left/right, switch, backup, with no colour meant. */
export const NO_COLOUR_PAIRS =
  "l/r r/l l/l r/r b/u s/w w/s p/b b/p s/p p/s l/s s/l p/w w/p r/s s/r r/o w/o o/b b/o g/o o/g n/o o/n n/s s/n n/b b/n o/s o/r l/o o/l l/b n/r n/p p/n p/p s/s k/l l/k p/o o/p u/s g/p p/g l/p n/g n/u n/m m/n";

/** A colour word or code, then words beside it that make it another thing: "warning lamp red", "BK up". */
export const COLOUR_COLLISIONS: Readonly<
  Record<string, { readonly before?: string; readonly after?: string }>
> = {
  bk: {
    before: "left right l r lh rh lf rf spk spkr speaker seat fold",
    after: "up lamp lamps light lights",
  },
  bu: { after: "lamp lamps light lights cam camera" },
  pk: { after: "brake brk light lights lamp lamps assist sensor" },
  rd: { after: "def defog defrost defroster" },
  wh: { after: "speed spd sensor" },
  rot: { after: "sensor speed angle" },
  vert: { after: "adjust pos position" },
  white: { after: "noise" },
  blue: { after: "tooth" },
  gold: { after: "plated" },
  black: { after: "box" },
  brown: { after: "out" },
};

/** Letters that stand alone on each side of a pair in a line; the others are more often something else ("A/C"). */
export const PAIR_LETTERS = "b r g w y o l p v n u k";

/** After a colour these say what shines or is pressed in that colour: "green light". */
export const SHINING_WORDS = "light lamp lampe licht leuchte voyant spia testigo";

/** After a colour these never leave a lead's colour. */
export const SHINING_PARTS = "led leds bulb button lens diode";

/** Before "light" these make a lamp of it, and no light shade: "tail light brown". */
export const LAMP_WORDS =
  "tail brake stop head fog dome park parking side marker running clearance reverse reversing backup turn signal indicator dash interior courtesy cargo map work plate license licence number warning driving day daytime reading cabin spot flood instrument panel door bed boot trunk position strobe beacon trailer navigation anchor steaming";
