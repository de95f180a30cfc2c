import type { LanguageName, NamedColour } from "../../catalogue/colour-words.ts";
import type { Colour } from "../../graph/harness.ts";
import { readColourText } from "./colour-alone.ts";
import { type Cell, colourOf, readCell } from "./colour-cell.ts";
import { type Decision, decideLetters, isCode } from "./colour-customs.ts";
import { colourSpan } from "./colour-span.ts";

export { colourSpan, readColourText };

/** The colours of one chart, and how they were read. */
export type ChartColours = {
  /** One for each text; `null` where there is none, or it could be two. */
  readonly colours: readonly (Colour | null)[];
  /** The custom of letters that the whole chart is written in ("German letters"); `null` where none stood out. */
  readonly custom: string | null;
  /** The texts, by index, that could be more than one colour. */
  readonly doubtful: readonly number[];
};

/** Reads all colour cells of one chart together: see `readChartColours`. */
export function readColours(texts: readonly string[]): readonly (Colour | null)[] {
  return readChartColours(texts).colours;
}

/**
 * Reads all colour cells of one chart together. Words are read as they are, in seven languages; letters by the custom
 * under which the whole chart is consistent. Shades are dropped: IEC 60757 has none.
 * @param texts the cells as written; their order and letter case change nothing
 */
export function readChartColours(texts: readonly string[]): ChartColours {
  const cells = new Map<string, Cell>();
  const letters = new Set<string>();
  const shortColours = new Set<NamedColour>();
  const languages = new Set<LanguageName>();
  for (const text of texts) {
    if (cells.has(text)) continue;
    const cell = readCell(text);
    cells.set(text, cell);
    for (const piece of cell.pieces) {
      if ("letters" in piece) letters.add(piece.letters);
      else {
        if (piece.word.isShort) shortColours.add(piece.word.colours[0]!);
        if (piece.word.language) languages.add(piece.word.language);
      }
    }
  }
  const decision = decideLetters(letters, shortColours, languages);
  const results = new Map<string, Colour | "doubtful" | null>();
  for (const [text, cell] of cells) results.set(text, settleCell(text, cell, decision));
  const colours = texts.map((text) => {
    const result = results.get(text)!;
    return result === "doubtful" ? null : result;
  });
  const doubtful = [...texts.keys()].filter((index) => results.get(texts[index]!) === "doubtful");
  return { colours, custom: decision.custom, doubtful };
}

function settleCell(text: string, cell: Cell, decision: Decision): Colour | "doubtful" | null {
  const hasOther = cell.pieces.some((piece) => "letters" in piece && !isCode(piece.letters));
  if (hasOther && cell.pieces.length === 1) return null;
  if (cell.isMixed || hasOther) return colourSpan(text)?.colour ?? null;
  const codes: NamedColour[] = [];
  for (const piece of cell.pieces) {
    if ("word" in piece) codes.push(...piece.word.colours);
    else {
      const read = decision.read.get(piece.letters);
      if (!read) return decision.doubtful.has(piece.letters) ? "doubtful" : null;
      codes.push(...read);
    }
  }
  return colourOf(codes, cell);
}
