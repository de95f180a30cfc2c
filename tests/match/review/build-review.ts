import { readColour } from "../../../src/catalogue/colours.ts";
import type { Chart, Lead } from "../../../src/match/chart.ts";
import type { Proposal } from "../../../src/match/propose/proposal.ts";
import { emptyLead } from "../../../src/match/review/mend.ts";
import { NO_PROPOSAL, type Review, startReview } from "../../../src/match/review/review.ts";
import type { JobEnds, NewEnd } from "../../../src/match/review/to-edit.ts";

/** "4 constant-feed RD": label, function (several with "|" are not certain), colour. */
export function lead(line: string): Lead {
  const [label = "", functions = "", colour] = line.split(" ");
  const ids = functions.split("|").filter((id) => id !== "unknown" && id !== "not-used");
  return {
    ...emptyLead(label),
    text: `${functions} as the chart has it`,
    reading: {
      candidates: ids.map((id) => ({ function: id, share: 1 / ids.length })),
      certain: ids.length === 1,
    },
    colour: colour ? readColour(colour) : null,
    isUnused: functions === "not-used",
    source: line,
  };
}

export function chart(...lines: readonly string[]): Chart {
  return { title: "", leads: lines.map(lead), notes: [], unread: [] };
}

export function review(left: Chart, right: Chart, proposal: Partial<Proposal> = {}): Review {
  return startReview({ left, right }, { ...NO_PROPOSAL, ...proposal }, "solder-and-sleeve");
}

export function pair(left: string, right: string): Proposal["joins"][number] {
  return { left, right, function: "unknown", confidence: 0.9, why: "both mean the same", traps: [] };
}

const end = (side: NewEnd["side"], designation: string): NewEnd => ({
  part: null,
  side,
  designation,
  name: "",
  view: "wire-side",
  form: "housing",
  shell: null,
  rows: 1,
  chart: null,
});

export const ENDS: JobEnds = { left: end("vehicle", "X1"), right: end("equipment", "X2") };

export const VAN = chart(
  "1 constant-feed RD",
  "2 switched-feed YE",
  "3 ground BK",
  "4 speed PK",
  "5 not-used",
  "6 illumination|switched-feed OG",
);
export const UNIT = chart(
  "A constant-feed YE",
  "B switched-feed RD",
  "C ground BK",
  "D ground BN",
  "E mute WH",
);
export const PROPOSAL: Partial<Proposal> = {
  joins: [pair("1", "A"), pair("2", "B")],
  splices: [{ function: "ground", left: ["3"], right: ["C", "D"], ends: 3, current_A: null }],
  ask: [{ left: ["6"], right: ["E", "B"], why: "the wording means either" }],
  capLeft: ["4"],
  capRight: [],
  missing: [{ side: "right", lead: "E", why: "the unit is silent without it" }],
};
