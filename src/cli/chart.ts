import { writeColour } from "../catalogue/colours.ts";
import { functionOf } from "../catalogue/functions.ts";
import type { Chart, Lead, ReadCharts } from "../match/chart.ts";
import { readChartFile } from "../match/read-chart-file.ts";
import { readArguments } from "./arguments.ts";
import { fileName, readBytes } from "./files.ts";
import { count, EXIT, plain, say } from "./unusable.ts";

export const usage = "pigtail chart FILE [--json] [--awg]";

/** Prints how a pinout chart is read, and what could not be. */
export async function run(given: readonly string[]): Promise<number> {
  const { values, positionals } = readArguments(
    given,
    { json: { type: "boolean" }, awg: { type: "boolean" } },
    { usage, least: 1, most: 1 },
  );
  const path = positionals[0]!;
  const read = await readChartFile(readBytes(path), { sizes: values.awg ? "awg" : "metric" });
  say(values.json ? JSON.stringify(report(read)) : inWords(plain(fileName(path)), read));
  return EXIT.clean;
}

/** The shape is kept from version to version. */
function report(read: ReadCharts) {
  return {
    charts: read.charts.map(({ title, leads, notes, unread }) => ({
      title,
      rows: leads.map((lead) => ({
        name: lead.name,
        label: lead.label,
        function: lead.reading.candidates[0]?.function ?? null,
        certain: lead.reading.certain,
        alternatives: lead.reading.candidates.slice(1).map((candidate) => candidate.function),
        text: lead.text,
        colour: lead.colour ? writeColour(lead.colour) : null,
        size_mm2: lead.area_mm2,
        current_A: lead.current_A,
        fuse_A: lead.fuse_A,
        direction: lead.direction,
        unused: lead.isUnused,
        line: lead.line,
      })),
      notes: notes.map(({ line, text }) => ({ line, text })),
      unread: unread.map(({ line, text }) => ({ line, text })),
    })),
    remarks: read.remarks,
  };
}

function inWords(file: string, { charts, remarks }: ReadCharts): string {
  const lines: string[] = [];
  for (const [index, chart] of charts.entries()) {
    const which = charts.length > 1 ? `, chart ${index + 1}` : "";
    const title = chart.title ? ` "${plain(chart.title)}"` : "";
    const unread = chart.unread.length ? `, ${chart.unread.length} not read` : "";
    lines.push(`${file}${which}:${title} ${count(chart.leads.length, "row")}${unread}`);
    lines.push(...table(chart));
    for (const { line, text } of chart.unread) lines.push(`  not read, line ${line}: ${plain(text)}`);
    for (const { line, text } of chart.notes) lines.push(`  note, line ${line}: ${plain(text)}`);
  }
  if (charts.length === 0) lines.push(`${file}: no chart`);
  lines.push(...remarks.map((remark) => `  ${plain(remark)}`));
  return lines.join("\n");
}

function table(chart: Chart): readonly string[] {
  if (chart.leads.length === 0) return [];
  const rows = [
    ["Lead", "Function", "Colour", "mm²", "A", "Fuse", "Way", "On the chart"],
    ...chart.leads.map(cellsOf),
  ];
  const widths = rows[0]!.map((_, column) => Math.max(...rows.map((row) => [...row[column]!].length)));
  return rows.map((row) =>
    `  ${row.map((cell, column) => cell + " ".repeat(widths[column]! - [...cell].length)).join("  ")}`.trimEnd(),
  );
}

function cellsOf(lead: Lead): readonly string[] {
  const [first] = lead.reading.candidates;
  const name = lead.isUnused ? "not used" : first ? functionOf(first.function).name : "not known";
  const number = (value: number | null) => (value === null ? "" : String(Number(value.toPrecision(3))));
  return [
    lead.name,
    lead.isUnused || lead.reading.certain || !first ? name : `${name}?`,
    lead.colour ? writeColour(lead.colour) : lead.colourText && `? ${lead.colourText}`,
    number(lead.area_mm2),
    number(lead.current_A),
    number(lead.fuse_A),
    lead.direction === "unknown" || lead.direction === "none" ? "" : lead.direction,
    lead.text,
  ].map(plain);
}
