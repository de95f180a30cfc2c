import { COLOUR_LANGUAGES } from "../../catalogue/colour-words.ts";
import { fold } from "./fold.ts";
import { coloursOf } from "./words.ts";

/** "blank" is a bare wire in German and Dutch, and an empty cavity in English. */
const NOT_HERE = new Set(["blank", "natur", "natural"]);
const WORDS = new Set(
  Object.values(COLOUR_LANGUAGES).flatMap(({ endings, words }) =>
    (words.none ?? "")
      .split(" ")
      .flatMap((word) =>
        word.endsWith("-") ? endings.split(" ").map((ending) => word.slice(0, -1) + ending) : [word],
      ),
  ),
);

/**
 * True where a wording names a lead by a colour that IEC 60757 has no letters for, or by none: "tan", "tan/yellow",
 * "bare". Such a lead has a colour in its chart's words only.
 */
export function isColourless(text: string): boolean {
  if (text.length > 40) return false;
  if (hasUnknownBase(text)) return true;
  const words = fold(text)
    .split(/[^a-z]+/)
    .filter((word) => !/^(?:|light|dark|lt|dk|with|stripe|tracer|mit|avec|con|met|wire|copper)$/.test(word));
  if (words.length === 0 || words.length > 3) return false;
  const unknown = words.filter((word) => WORDS.has(word) && !NOT_HERE.has(word));
  return unknown.length > 0 && words.every((word) => unknown.includes(word) || coloursOf([word])[0]);
}

/** "mustard/white": a tracer is known, and its base is a word that nobody knows. */
export function hasUnknownBase(text: string): boolean {
  const parts = /^(\p{L}{4,12})\/(\p{L}{2,12})$/u.exec(text);
  if (!parts) return false;
  const [base, tracer] = coloursOf([parts[1]!, parts[2]!]);
  return base === null && tracer !== null;
}
