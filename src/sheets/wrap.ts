import { textWidth, type Weight } from "../layout/text/measure.ts";
import { printable } from "../layout/text/printable.ts";

/** A width may have been computed from the very text; rounding must not break it then. */
const ROUNDING = 1e-6;

/**
 * A text as lines no wider than `width`. Breaks at spaces; a word that is too long by itself is cut.
 * @returns at least one line, which is empty for an empty text
 */
export function wrapText(text: string, size: number, weight: Weight, width: number): string[] {
  const lines: string[] = [];
  for (const paragraph of text.split(/\r\n|[\r\n]/)) {
    let line = "";
    for (const word of wordsOf(paragraph)) {
      const longer = line === "" ? word : `${line} ${word}`;
      if (textWidth(longer, size, weight) <= width + ROUNDING) {
        line = longer;
        continue;
      }
      if (line !== "") lines.push(line);
      line = word;
      while (textWidth(line, size, weight) > width + ROUNDING) {
        const head = headThatFits(line, size, weight, width);
        if (head === line) break;
        lines.push(head);
        line = line.slice(head.length);
      }
    }
    lines.push(line);
  }
  return lines;
}

/** Words of a text. A sign stays with its word: "front left +" must not lose its polarity at a line's end. */
function wordsOf(text: string): string[] {
  return printable(text).split(/ (?![+−](?: |$))/);
}

/** The longest beginning of a word that fits; one character at least, so that wrapping always ends. */
function headThatFits(word: string, size: number, weight: Weight, width: number): string {
  let head = "";
  for (const character of word) {
    if (head !== "" && textWidth(head + character, size, weight) > width + ROUNDING) break;
    head += character;
  }
  return head;
}

/** The width of the widest word of a text. */
export function widestWord(text: string, size: number, weight: Weight): number {
  return Math.max(0, ...wordsOf(text).map((word) => textWidth(word, size, weight)));
}
