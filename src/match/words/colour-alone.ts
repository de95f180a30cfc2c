import type { NamedColour } from "../../catalogue/colour-words.ts";
import type { Colour } from "../../graph/harness.ts";
import { type Cell, colourOf, readCell } from "./colour-cell.ts";
import { lettersAlone } from "./colour-customs.ts";

/**
 * Reads one colour text without a chart around it: words, short words, IEC 60757 letters, and letters that every custom
 * reads alike ("W-B").
 * @returns `null` where the text is no colour, or customs differ ("B", "GR", "BL")
 */
export function readColourText(text: string): Colour | null {
  const cell = readCell(text);
  if (cell.isMixed) return null;
  const letters = cell.pieces.flatMap((piece) => ("letters" in piece ? [piece.letters] : []));
  const single = letters.length > 0 ? readLetters(letters, cell) : [];
  return single && colourOf(single.length > 0 ? single : wordsOf(cell), cell);
}

const wordsOf = (cell: Cell): readonly NamedColour[] =>
  cell.pieces.flatMap((piece) => ("word" in piece ? piece.word.colours : []));

/** Letters alone, or beside words: a word between them is kept in its place. */
function readLetters(letters: readonly string[], cell: Cell): readonly NamedColour[] | null {
  if (letters.length === cell.pieces.length) return lettersAlone(letters);
  const codes: NamedColour[] = [];
  for (const piece of cell.pieces) {
    const colours = "word" in piece ? piece.word.colours : lettersAlone([piece.letters]);
    if (!colours) return null;
    codes.push(...colours);
  }
  return codes;
}
