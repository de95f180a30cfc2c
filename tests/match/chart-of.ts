import { readColour } from "../../src/catalogue/colours.ts";
import type { Chart, Lead } from "../../src/match/chart.ts";
import { readFunction } from "../../src/match/words/read-function.ts";

/** A chart as the reader would give it: each row is "label | words | colour", and what a test adds to it. */
export function chartOf(title: string, rows: readonly (string | readonly [string, Partial<Lead>])[]): Chart {
  const leads = rows.map((given, index): Lead => {
    const [row, extra] = typeof given === "string" ? [given, {}] : given;
    const [label = "", text = "", colourText = ""] = row.split("|").map((cell) => cell.trim());
    return {
      name: label,
      label,
      text,
      reading: readFunction(text),
      colour: readColour(colourText),
      colourText,
      area_mm2: null,
      current_A: null,
      fuse_A: null,
      direction: "unknown",
      isUnused: false,
      kept: [],
      line: index + 1,
      source: row,
      ...extra,
    };
  });
  return { title, leads, notes: [], unread: [] };
}
