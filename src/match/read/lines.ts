/** A line of the text, or a row of a sheet, counted from 1. */
export type Line = { readonly line: number; readonly text: string };

/** As many cavities as a housing may have. */
export const MOST_ROWS = 2000;
/** No row of a chart is longer; what is, is shown up to here and not taken apart. */
export const LONGEST_LINE = 5000;
/** A chart of 2000 rows stays far below it. */
const MOST_CHARACTERS = 600_000;

export type Lines = { readonly lines: readonly Line[]; readonly remarks: readonly string[] };

/**
 * The lines of a text that hold something. Large input costs no more than the part that is taken.
 * @returns no lines and one remark where the text is none
 */
export function sourceLines(given: string): Lines {
  const junk = whatElse(given);
  const text = given.slice(0, MOST_CHARACTERS + 1);
  if (junk) return { lines: [], remarks: [junk] };
  const lines: Line[] = [];
  const remarks: string[] = [];
  const end = Math.min(text.length, MOST_CHARACTERS);
  const breaks = /\r\n|[\n\r\u2028\u2029\f\v]/g;
  let line = 1;
  let at = 0;
  while (at < end) {
    breaks.lastIndex = at;
    const found = breaks.exec(text);
    const stop = found && found.index < end ? found.index : end;
    const whole = text.slice(at, stop);
    if (/\S/.test(whole.slice(0, LONGEST_LINE))) {
      if (lines.length === MOST_ROWS) {
        remarks.push(`Only the first ${MOST_ROWS} rows are read; from line ${line} on nothing is taken.`);
        return { lines, remarks };
      }
      if (whole.length > LONGEST_LINE)
        remarks.push(
          `Line ${line} is too long for a row; only its first ${LONGEST_LINE} characters are shown.`,
        );
      lines.push({ line, text: whole.slice(0, LONGEST_LINE) });
    }
    if (!found || found.index >= end) break;
    at = found.index + found[0].length;
    line++;
  }
  if (text.length > MOST_CHARACTERS)
    remarks.push(`The text is too long for a chart; from line ${line} on nothing is taken.`);
  return { lines, remarks };
}

const KINDS: readonly (readonly [string, string])[] = [
  [
    "PK\u0003\u0004",
    "This is a packed file and no text. Save a spreadsheet under a name that ends in .xlsx.",
  ],
  ["%PDF-", "This is a PDF file and no text. Open it, copy the table in it and paste that."],
  ["{\\rtf", "This is a formatted document and no text. Open it, copy the table in it and paste that."],
];

/** Says what a text is that is none; `null` where it is one. */
function whatElse(text: string): string | null {
  const known = KINDS.find(([start]) => text.startsWith(start));
  if (known) return known[1];
  const sample = text.slice(0, 8192);
  if (sample.length < 64) return null;
  const strange = sample.match(/(?![\t\n\v\f\r\u0085])[\p{Cc}\ufffd]/gu)?.length ?? 0;
  return strange * 12 > sample.length ? "This is no text but the contents of some other kind of file." : null;
}
