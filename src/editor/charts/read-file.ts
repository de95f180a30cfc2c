import { decodeText } from "../../match/read/decode.ts";
import { readChartFile } from "../../match/read-chart-file.ts";
import type { ReadAnswer } from "./messages.ts";

/** A text longer than this is read as far as it goes; a workbook has no text to be mended line by line. */
const MOST_TEXT_BYTES = 4_000_000;

/** Reads a file that was dropped or chosen, and gives its text where it is one. */
export async function readFileBytes(buffer: ArrayBuffer, sizes: "metric" | "awg"): Promise<ReadAnswer> {
  const bytes = new Uint8Array(buffer);
  const read = await readChartFile(bytes, { sizes });
  const isBook = (bytes[0] === 0x50 && bytes[1] === 0x4b) || (bytes[0] === 0xd0 && bytes[1] === 0xcf);
  return { read, text: isBook ? "" : decodeText(bytes.subarray(0, MOST_TEXT_BYTES)) };
}
