import { writeColour } from "../../../src/catalogue/colours.ts";
import type { Chart, Lead } from "../../../src/match/chart.ts";
import { readCharts } from "../../../src/match/read-chart.ts";

/** "A4 constant-feed YE 1.5mm² 10A fuse 15A gives": what a lead was read as, in one line. */
export function told(lead: Lead): string {
  const [first] = lead.reading.candidates;
  return [
    lead.name,
    lead.isUnused ? "unused" : (first?.function ?? "?"),
    writeColour(lead.colour),
    lead.area_mm2 === null ? "" : `${Number(lead.area_mm2.toPrecision(3))}mm²`,
    lead.current_A === null ? "" : `${lead.current_A}A`,
    lead.fuse_A === null ? "" : `fuse ${lead.fuse_A}A`,
    lead.direction === "unknown" ? "" : lead.direction,
  ]
    .filter(Boolean)
    .join(" ");
}

/** The only chart of a text. */
export function oneChart(text: string | readonly (readonly string[])[]): Chart {
  const { charts } = readCharts(text);
  if (charts.length !== 1) throw new Error(`${charts.length} charts`);
  return charts[0]!;
}

export function rowsOf(text: string): readonly string[] {
  return oneChart(text).leads.map(told);
}
