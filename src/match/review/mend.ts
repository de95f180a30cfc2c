import { writeColour } from "../../catalogue/colours.ts";
import type { Chart, Lead } from "../chart.ts";

/** What a person corrects of a row. */
export type LeadChanges = Partial<
  Pick<
    Lead,
    "label" | "text" | "reading" | "colour" | "area_mm2" | "direction" | "current_A" | "fuse_A" | "isUnused"
  >
>;

/**
 * Everything a person did to a chart after it was read. It is kept apart from the reading, so that reading the
 * text again, one line mended, loses nothing of it.
 */
export type Mends = {
  /** Corrections, by the key of the row. */
  readonly changes: Readonly<Record<string, LeadChanges>>;
  /** Rows typed by hand, after those that were read. */
  readonly added: readonly Lead[];
  /** Lines that a person has said are no rows, as written. */
  readonly aside: readonly string[];
};

export const NO_MENDS: Mends = { changes: {}, added: [], aside: [] };

/** A chart as mended. `keys[i]` names `chart.leads[i]`, and stays the same whatever is corrected in that row. */
export type MendedChart = { readonly chart: Chart; readonly keys: readonly string[] };

/** The chart as read, with what a person corrected, added and set aside. */
export function mend(read: Chart, mends: Mends): MendedChart {
  const aside = new Set(mends.aside);
  const seen = new Map<string, number>();
  const keys: string[] = [];
  const rows: Lead[] = [];
  const notes = [...read.notes];
  const put = (lead: Lead, key: string) => {
    const changes = mends.changes[key];
    keys.push(key);
    rows.push(changes ? corrected(lead, changes) : lead);
  };
  for (const lead of read.leads) {
    const count = (seen.get(lead.source) ?? 0) + 1;
    seen.set(lead.source, count);
    if (aside.has(lead.source)) notes.push({ line: lead.line, text: lead.source });
    else put(lead, count === 1 ? `=${lead.source}` : `=${count}=${lead.source}`);
  }
  for (const [index, lead] of mends.added.entries()) put(lead, `+${index}`);
  for (const line of read.unread) if (aside.has(line.text)) notes.push(line);
  notes.sort((a, b) => a.line - b.line);
  return {
    keys,
    chart: {
      title: read.title,
      leads: withOwnNames(rows),
      notes,
      unread: read.unread.filter((line) => !aside.has(line.text)),
    },
  };
}

function corrected(lead: Lead, changes: LeadChanges): Lead {
  const next = { ...lead, ...changes };
  const renamed = "label" in changes || (lead.label === null && "colour" in changes);
  return renamed ? { ...next, name: next.label ?? (writeColour(next.colour) || lead.name) } : next;
}

/** Names are what everything else holds on to: two rows that a person gave one label are told apart. */
function withOwnNames(leads: readonly Lead[]): readonly Lead[] {
  const taken = new Set<string>();
  return leads.map((lead) => {
    let name = lead.name;
    for (let count = 2; taken.has(name); count++) name = `${lead.name} (${count})`;
    taken.add(name);
    return name === lead.name ? lead : { ...lead, name };
  });
}

/** The names that rows had before and have now, for those that changed them. */
export function renames(before: MendedChart, after: MendedChart): ReadonlyMap<string, string> {
  const now = new Map(after.keys.map((key, index) => [key, after.chart.leads[index]!.name]));
  const changed = new Map<string, string>();
  for (const [index, key] of before.keys.entries()) {
    const old = before.chart.leads[index]!.name;
    const name = now.get(key);
    if (name !== undefined && name !== old) changed.set(old, name);
  }
  return changed;
}

export function changeRow(mends: Mends, key: string, changes: LeadChanges): Mends {
  return { ...mends, changes: { ...mends.changes, [key]: { ...mends.changes[key], ...changes } } };
}

/** Says that a row or a line is no row. A row that was typed by hand goes. */
export function setAside(mends: Mends, key: string, source: string): Mends {
  const index = /^\+\d+$/.test(key) ? Number(key.slice(1)) : -1;
  if (index < 0) return { ...mends, aside: [...new Set([...mends.aside, source])] };
  // The keys of the rows after it move up by one, and what was corrected in them with them.
  const changes: Record<string, LeadChanges> = {};
  for (const [name, change] of Object.entries(mends.changes)) {
    const at = /^\+\d+$/.test(name) ? Number(name.slice(1)) : -1;
    if (at < index) changes[name] = change;
    else if (at > index) changes[`+${at - 1}`] = change;
  }
  return { ...mends, changes, added: mends.added.filter((_, at) => at !== index) };
}

/** Takes a line that was set aside back among the rows. */
export function takeBack(mends: Mends, source: string): Mends {
  return { ...mends, aside: mends.aside.filter((text) => text !== source) };
}

/** Adds an empty row under the next free number. */
export function addRow(mends: Mends, chart: Chart): Mends {
  const taken = new Set(chart.leads.map((lead) => lead.name));
  let number = chart.leads.length + 1;
  while (taken.has(String(number))) number++;
  return { ...mends, added: [...mends.added, emptyLead(String(number))] };
}

export function emptyLead(label: string): Lead {
  return {
    name: label,
    label,
    text: "",
    reading: { candidates: [], certain: false },
    colour: null,
    colourText: "",
    area_mm2: null,
    current_A: null,
    fuse_A: null,
    direction: "unknown",
    isUnused: false,
    kept: [],
    line: 0,
    source: "",
  };
}

export const EMPTY_CHART: Chart = { title: "", leads: [], notes: [], unread: [] };
