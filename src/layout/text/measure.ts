import { BOLD_ADVANCES, REGULAR_ADVANCES, UNITS_PER_EM } from "./advances.ts";
import { printable } from "./printable.ts";

export type Weight = "regular" | "bold";

const NONE = 0xffff;
const PAGE_END = 0x3000;
const ELLIPSIS = "…";

type Table = {
  /** Advance by code point below `PAGE_END`; `NONE` where there is no glyph. */
  readonly page: Uint16Array;
  /** The few glyphs beyond it. */
  readonly beyond: ReadonlyMap<number, number>;
  /** Mean advance of letters and digits: the guess for a glyph that the typeface lacks. */
  readonly mean: number;
};

const TABLES: Readonly<Record<Weight, Table>> = {
  regular: decode(REGULAR_ADVANCES),
  bold: decode(BOLD_ADVANCES),
};

/**
 * Width of one line of text, without kerning, as every writer draws it.
 * @param text what `printable` returned
 * @param size font size, any unit
 * @returns width in the unit of `size`; a glyph that the typeface lacks counts as one of mean width, an ideograph
 *   or pictograph as one em
 */
export function textWidth(text: string, size: number, weight: Weight = "regular"): number {
  return (unitsOf(text, TABLES[weight]) * size) / UNITS_PER_EM;
}

/**
 * The characters of a text that the typeface cannot draw.
 * @returns each once, in the order they appear; empty when all can be drawn
 */
export function covered(text: string): string[] {
  const missing = new Set<string>();
  for (const character of printable(text)) {
    if (advanceOf(character.codePointAt(0) ?? 0, TABLES.regular) === NONE) missing.add(character);
  }
  return [...missing];
}

/**
 * Shortens a text to a width, with an ellipsis where something was cut.
 * @param maxWidth in the unit of `size`
 * @returns the text itself where it fits; nothing where not even the ellipsis does
 */
export function fitText(text: string, size: number, weight: Weight, maxWidth: number): string {
  const line = printable(text);
  const table = TABLES[weight];
  const room = (maxWidth * UNITS_PER_EM) / size;
  // A caller may compute the width of the very text; rounding must not cut it then.
  if (unitsOf(line, table) <= room + 1e-6) return line;
  let used = unitsOf(ELLIPSIS, table);
  if (used > room) return "";
  let kept = "";
  for (const character of line) {
    used += unitsOf(character, table);
    if (used > room) break;
    kept += character;
  }
  return kept.trimEnd() + ELLIPSIS;
}

function unitsOf(text: string, table: Table): number {
  let units = 0;
  for (let index = 0; index < text.length; index++) {
    let code = text.charCodeAt(index);
    if (code >= 0xd800 && code < 0xdc00) {
      code = text.codePointAt(index) ?? code;
      if (code > 0xffff) index++;
    }
    const advance = advanceOf(code, table);
    units += advance === NONE ? (code >= 0x2e80 ? UNITS_PER_EM : table.mean) : advance;
  }
  return units;
}

function advanceOf(code: number, table: Table): number {
  return (code < PAGE_END ? table.page[code] : table.beyond.get(code)) ?? NONE;
}

/** Reads the runs of `advances.ts`. */
function decode(text: string): Table {
  const page = new Uint16Array(PAGE_END).fill(NONE);
  const beyond = new Map<number, number>();
  for (const run of text.split(";")) {
    const [first = "", list = ""] = run.split(":");
    let code = Number.parseInt(first, 16);
    for (const part of list.split(",")) {
      const [advance = "0", times = "1"] = part.split("*");
      for (let count = Number(times); count > 0; count--, code++) {
        if (code < PAGE_END) page[code] = Number(advance);
        else beyond.set(code, Number(advance));
      }
    }
  }
  const usual = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789";
  const total = [...usual].reduce((sum, character) => sum + (page[character.charCodeAt(0)] ?? 0), 0);
  return { page, beyond, mean: total / usual.length };
}
