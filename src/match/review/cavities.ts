import { functionOf } from "../../catalogue/functions.ts";
import type { Cavity, Connector, Direction, JobSide } from "../../graph/harness.ts";
import { makeCavity } from "../../graph/make.ts";
import type { Chart, FunctionReading, Lead } from "../chart.ts";
import { connectorChart } from "../from-pinout.ts";
import { sharedFunction } from "./words.ts";

const MOST_TEXT = 400;

/** The direction that is usual for a function on a side of the job, where a chart does not say. */
export function usualDirection(name: string, side: JobSide): Direction {
  const { group, givenBy } = functionOf(name);
  if (group === "data") return "both";
  if (group === "none") return name === "not-used" ? "none" : "unknown";
  if (givenBy === "either") return "unknown";
  return givenBy === side ? "gives" : "takes";
}

/**
 * The function that goes into the cavity. One that the chart left open is settled by what it was joined to;
 * otherwise it stays unknown, and the chart's words stand beside it.
 */
export function settledFunction(lead: Lead, partners: readonly Lead[]): string {
  const { candidates, certain } = lead.reading;
  if (lead.isUnused) return "not-used";
  if (certain && candidates[0]) return candidates[0].function;
  const shared = partners.length > 0 ? sharedFunction([lead, ...partners]) : "unknown";
  return candidates.some((one) => one.function === shared) ? shared : "unknown";
}

/** A row of a chart as a cavity of a housing on that side. */
export function cavityOf(lead: Lead, side: JobSide, partners: readonly Lead[] = []): Cavity {
  const name = settledFunction(lead, partners);
  const hasLead = lead.colour !== null || lead.area_mm2 !== null;
  return makeCavity((lead.label ?? lead.name).slice(0, MOST_TEXT) || lead.name, {
    function: name,
    text: lead.text.slice(0, MOST_TEXT),
    direction: lead.direction === "unknown" ? usualDirection(name, side) : lead.direction,
    lead: hasLead ? { colour: lead.colour, area_mm2: lead.area_mm2 ?? "unknown" } : null,
    use: name === "not-used" ? "optional" : "expected",
    current_A: lead.current_A ?? "unknown",
    fuse_A: lead.fuse_A ?? "unknown",
  });
}

/**
 * A connector that is in the harness already, as a chart: lead i is contact i + 1. Where nobody has settled a
 * function, the chart's own words are read once more.
 */
export function chartOfConnector(part: Connector, read?: (text: string) => FunctionReading): Chart {
  const chart = connectorChart(part);
  const taken = new Set<string>();
  const leads = chart.leads.map((lead): Lead => {
    let { name } = lead;
    for (let count = 2; taken.has(name); count++) name = `${lead.name} (${count})`;
    taken.add(name);
    const isOpen = read && lead.reading.candidates.length === 0 && !lead.isUnused && lead.text !== "";
    if (!isOpen) return name === lead.name ? lead : { ...lead, name };
    // Words that a person left as "not known" are not taken for settled by reading them again.
    return { ...lead, name, reading: { ...read(lead.text), certain: false } };
  });
  return { ...chart, leads };
}
