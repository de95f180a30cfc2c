/** The one family of screen and paper: Source Sans 3, SIL Open Font License 1.1. */
export const FAMILY = "Source Sans 3";

/** Its two files, as bytes. Who calls knows where they lie: the browser fetches them, the command line reads them. */
export type Typeface = { readonly regular: Uint8Array; readonly bold: Uint8Array };

/** Drawn in place of a character that the typeface lacks, so that nothing vanishes unseen. */
export const STAND_IN = "□";

/** A file as a string of one character a byte, the form that `btoa` and jsPDF take. */
export function binaryString(file: Uint8Array): string {
  let text = "";
  for (let at = 0; at < file.length; at += 8192) text += String.fromCharCode(...file.subarray(at, at + 8192));
  return text;
}
