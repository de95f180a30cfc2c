import { writeColour } from "../../catalogue/colours.ts";
import type { Colour } from "../../graph/harness.ts";
import type { Chart, ChartLine, Lead } from "../chart.ts";
import { hasUnknownBase, isColourless } from "./colourless.ts";
import { directionCells } from "./direction.ts";
import type { Draft } from "./draft.ts";
import { labelRange } from "./label.ts";
import { bareTitle, isPageNumber } from "./notes.ts";
import type { ReadGrid } from "./read-grid.ts";
import { coloursOf, functionReading } from "./words.ts";

/** A chart, what to know about it, and how well it was understood: more is better, for one and the same text. */
export type Assembled = {
  readonly chart: Chart;
  readonly remarks: readonly string[];
  readonly worth: number;
};

/** Makes a chart of its rows: colours read together, leads named, each once. */
export function assemble(grid: ReadGrid): Assembled {
  const remarks: string[] = [];
  const drafts = grid.rows.flatMap(({ draft }) => draft ?? []).flatMap(spread);
  const colours = coloursOf(drafts.map(({ colourText }) => colourText));
  const tracers = coloursOf(drafts.map(({ tracerText }) => tracerText));
  const directions = directionCells(drafts.map(({ directionCell }) => directionCell));
  const labels = uniqueLabels(drafts, remarks);
  const isTerminals = areTerminals(drafts);
  const names = new Map(labels.flatMap((label) => (label === null ? [] : [[label, 1] as const])));
  const leads = drafts.map((draft, index): Lead => {
    const read = hasUnknownBase(draft.colourText) ? null : colours[index]!;
    const { colour, text: colourText, left } = withTracer(draft, read, tracers[index]!);
    const own = draft.directionCell === "" ? "unknown" : directions[index]!;
    const label = labels[index]!;
    const asTerminal = isTerminals && draft.text === "" && draft.label !== null;
    const text = asTerminal ? draft.label! : draft.text;
    const isUnused = draft.isUnused && !asTerminal;
    return {
      name: label ?? unique(nameOf(colour, colourText, text, draft.line), names),
      label,
      text,
      reading: asTerminal ? functionReading(text) : draft.reading,
      colour,
      colourText,
      area_mm2: draft.area_mm2,
      current_A: draft.current_A,
      fuse_A: draft.fuse_A,
      direction: own === "unknown" || own === "none" ? draft.direction : own,
      isUnused,
      kept: left ? [...draft.kept, left] : draft.kept,
      line: draft.line,
      source: draft.source,
    };
  });
  const lines = (wanted: string): readonly ChartLine[] =>
    grid.rows.flatMap(({ row, fate }) =>
      fate === wanted ? [{ line: row.line, text: row.source.trim() }] : [],
    );
  const notes = lines("note");
  const start = leads[0]?.line ?? Number.POSITIVE_INFINITY;
  const title = notes.find(({ line, text }) => line <= start && !isPageNumber(text));
  const chart: Chart = {
    title: title ? bareTitle(title.text).slice(0, 200) : "",
    leads,
    notes,
    unread: lines("unread"),
  };
  return { chart, remarks, worth: worthOf(chart) };
}

/** "5-8 not used" speaks of four cavities. */
function spread(draft: Draft): readonly Draft[] {
  const range = draft.isUnused && draft.label !== null ? labelRange(draft.label) : null;
  return range ? range.map((label) => ({ ...draft, label })) : [draft];
}

function withTracer(
  draft: Draft,
  colour: Colour | null,
  tracer: Colour | null,
): { readonly colour: Colour | null; readonly text: string; readonly left: string } {
  const { colourText, tracerText } = draft;
  if (tracerText === "") return { colour, text: colourText, left: "" };
  if (!colour || colour.tracer || !tracer) return { colour, text: colourText, left: tracerText };
  const whole = tracer.base === colour.base ? colour : { base: colour.base, tracer: tracer.base };
  return { colour: whole, text: `${colourText}/${tracerText}`, left: "" };
}

function uniqueLabels(drafts: readonly Draft[], remarks: string[]): readonly (string | null)[] {
  const given = drafts.map(({ label }) => label);
  const filled = given.filter((label) => label !== null);
  const isRepeated = new Set(filled).size < filled.length;
  // The same numbers in two housings of one table: the housing's name tells them apart.
  const housed = drafts.map(({ label, connector }) =>
    label !== null && connector ? `${connector}-${label}` : label,
  );
  const isHoused = isRepeated && drafts.some(({ connector }) => connector !== "");
  const wanted = isHoused ? housed : given;
  const taken = new Map<string, number>();
  const again = new Set<string>();
  const result = wanted.map((label) => {
    if (label === null) return null;
    if (taken.has(label)) again.add(label);
    return unique(label, taken);
  });
  if (again.size) {
    const some = [...again].slice(0, 5).join(", ");
    remarks.push(
      `${some} ${again.size === 1 ? "stands" : "stand"} in more than one row; each row is a lead of its own.`,
    );
  }
  return result;
}

/** "4", then "4 (2)". The map counts how often a name was asked for. */
function unique(name: string, taken: Map<string, number>): string {
  let count = (taken.get(name) ?? 0) + 1;
  let result = count === 1 ? name : `${name} (${count})`;
  while (count > 1 && taken.has(result)) result = `${name} (${++count})`;
  taken.set(name, count);
  if (result !== name) taken.set(result, 1);
  return result;
}

const LONGEST_NAME = 28;

function nameOf(colour: Colour | null, colourText: string, text: string, line: number): string {
  if (colour) return writeColour(colour);
  const words = colourText || text;
  if (words === "") return `line ${line}`;
  if (words.length <= LONGEST_NAME) return words;
  const cut = words.slice(0, LONGEST_NAME);
  return `${cut.slice(0, Math.max(cut.lastIndexOf(" "), 12)).trimEnd()}…`;
}

/** A chart that names its leads by terminal of DIN 72552: the label says what they are for. */
function areTerminals(drafts: readonly Draft[]): boolean {
  const labels = drafts.flatMap(({ label }) => label ?? []);
  const terminals = labels.filter((label) => /^(?:15|30|31|49|5[0-9]|8[0-9]|[lr])[a-z]{0,2}$/i.test(label));
  return terminals.length >= 2 && terminals.length >= labels.length * 0.6 && labels.length <= 24;
}

function worthOf(chart: Chart): number {
  let worth = -chart.unread.length;
  for (const lead of chart.leads) {
    // A number alone on its line may be anything.
    const isBare = lead.isUnused && lead.text === "" && lead.kept.length === 0;
    if (lead.label !== null && !isBare) worth += 1;
    if (lead.colour) worth += 1;
    else if (lead.colourText !== "" && !isColourless(lead.colourText)) worth -= 0.5;
    if (lead.isUnused) worth += isBare ? 0.2 : 2;
    else if (lead.reading.certain) worth += 2;
    else worth += lead.reading.candidates.length > 0 ? 1 : lead.text === "" ? -0.5 : 0;
    if (lead.area_mm2 !== null) worth += 0.4;
    if (lead.current_A !== null) worth += 0.3;
    if (lead.fuse_A !== null) worth += 0.3;
    worth -= lead.kept.length * 0.15;
    if (/[\t|;]|\s[–—]\s|: |\s\d+[.,]\d+$|^\d+\s(?!v)/i.test(lead.text)) worth -= 0.3;
  }
  return worth;
}
