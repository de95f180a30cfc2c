import { functionOf } from "../../catalogue/functions.ts";
import type { Cavity, Connector, Direction, JobSide } from "../../graph/harness.ts";
import { makeCavity } from "../../graph/make.ts";
import type { Chart, FunctionReading, Lead } from "../chart.ts";
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

/** A cavity of the harness as a row of a chart; one whose function nobody knows is read by `read` from its words. */
export function leadOfCavity(
  cavity: Cavity,
  index: number,
  read: (text: string) => FunctionReading = () => ({ candidates: [], certain: false }),
): Lead {
  const isKnown = functionOf(cavity.function).id !== "unknown";
  const unused = cavity.function === "not-used" || cavity.use === "plugged";
  return {
    name: cavity.label,
    label: cavity.label,
    text: cavity.text,
    reading: isKnown
      ? { candidates: unused ? [] : [{ function: cavity.function, share: 1 }], certain: true }
      : read(cavity.text),
    colour: cavity.lead?.colour ?? null,
    colourText: "",
    area_mm2: typeof cavity.lead?.area_mm2 === "number" ? cavity.lead.area_mm2 : null,
    current_A: typeof cavity.current_A === "number" ? cavity.current_A : null,
    fuse_A: typeof cavity.fuse_A === "number" ? cavity.fuse_A : null,
    direction: cavity.direction,
    isUnused: unused,
    kept: [],
    line: index + 1,
    source: `${index + 1} ${cavity.label}`,
  };
}

/** A connector that is in the harness already, as a chart: lead i is contact i + 1. */
export function chartOfConnector(part: Connector, read?: (text: string) => FunctionReading): Chart {
  const taken = new Set<string>();
  const leads = part.cavities.map((cavity, index) => {
    const lead = leadOfCavity(cavity, index, read);
    let { name } = lead;
    for (let count = 2; taken.has(name); count++) name = `${lead.name} (${count})`;
    taken.add(name);
    return name === lead.name ? lead : { ...lead, name };
  });
  return { title: part.chart?.title ?? part.name, leads, notes: [], unread: [] };
}
