import type { Colour } from "../../graph/harness.ts";
import type { FunctionReading } from "../chart.ts";
import { remembering } from "../remember.ts";
import { type ChartColours, colourSpan, readChartColours } from "../words/read-colour.ts";
import { readFunction } from "../words/read-function.ts";

/** What a wording is for. */
export const functionReading: (text: string) => FunctionReading = remembering(readFunction);

/** Where the colour stands in a longer line. */
export const colourSpanOf: (text: string) => { readonly start: number; readonly end: number } | null =
  remembering(colourSpan);

const together = remembering((key) => readChartColours(key.split("\n")));

/** The colours of a whole chart; what one row leaves open, the others may decide. */
export function chartColoursOf(texts: readonly string[]): ChartColours {
  if (texts.length === 0) return { colours: [], custom: null, doubtful: [] };
  return together(texts.map((text) => text.replaceAll("\n", " ")).join("\n"));
}

export function coloursOf(texts: readonly string[]): readonly (Colour | null)[] {
  return chartColoursOf(texts).colours;
}
