import { readCharts } from "../../match/read-chart.ts";
import type { ReadAnswer } from "./messages.ts";

type Sizes = "metric" | "awg";

/** Past this nobody's chart goes; a file that large is something else. */
const MOST_BYTES = 60_000_000;

/**
 * Reads a file that was dropped or chosen: a workbook, or text in whatever encoding it came.
 * @throws with words for a person where the file cannot be read
 */
export async function readChartFile(name: string, bytes: ArrayBuffer, sizes: Sizes): Promise<ReadAnswer> {
  if (bytes.byteLength > MOST_BYTES)
    throw new Error(`${name} is larger than any chart. Copy the chart's own rows and paste them.`);
  if (isZip(bytes))
    throw new Error(`${name} cannot be read. Save the sheet as CSV, or copy its rows and paste them.`);
  const text = textOf(bytes);
  return { text, read: readCharts(text, { sizes }) };
}

function isZip(bytes: ArrayBuffer): boolean {
  const [p, k] = new Uint8Array(bytes, 0, Math.min(2, bytes.byteLength));
  return p === 0x50 && k === 0x4b;
}

/** Text by its byte order mark, as UTF-8 where it is that, else as the old Western code page. */
export function textOf(bytes: ArrayBuffer): string {
  const [a, b] = new Uint8Array(bytes, 0, Math.min(2, bytes.byteLength));
  if (a === 0xff && b === 0xfe) return new TextDecoder("utf-16le").decode(bytes);
  if (a === 0xfe && b === 0xff) return new TextDecoder("utf-16be").decode(bytes);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}
