import { COLOUR_LANGUAGES } from "../../catalogue/colour-words.ts";

/**
 * Words of charts that mean nothing for what a lead is for, and that spelling would make something of: "maker" is no
 * marker, "table" no dash.
 */
const ORDINARY = new Set(
  (
    "maker makers made board truck drawn standard number numbers numero nummer table tables note notes comment comments " +
    "content contents project male female please colour color couleur farbe kleur kolor colore wiring diagram " +
    "theorique theoretical theoretisch teorico reelle real usual goes comes runs connects connect connected gehen geht führt fuhrt va vers naar do od " +
    "series version edition sheet page plan list rows column cable kabel length usage other others number " +
    "description terminal terminals plug plugs pinout holder point points point house body type model"
  ).split(" "),
);

/** Colour words of every language, with their endings. */
const COLOURS = new Set(
  Object.values(COLOUR_LANGUAGES).flatMap(({ endings, words }) =>
    Object.values(words)
      .flatMap((list) => list.split(" "))
      .flatMap((word) =>
        word.endsWith("-")
          ? [word.slice(0, -1), ...endings.split(" ").map((ending) => word.slice(0, -1) + ending)]
          : [word],
      ),
  ),
);

/** True for a word that must not be guessed at. */
export function isOrdinary(word: string): boolean {
  return ORDINARY.has(word);
}

/** True for a colour word: it says nothing of what a lead is for, and takes nothing from it. */
export function isColourWord(word: string): boolean {
  return COLOURS.has(word);
}
