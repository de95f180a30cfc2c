import type { Colour, Direction } from "../graph/harness.ts";

/** A function that a wording may mean, and how likely it is among those that it may mean; shares add up to 1. */
export type Candidate = { readonly function: string; readonly share: number };

/** What a chart's words were understood as, likeliest first; none where nothing fits. */
export type FunctionReading = {
  readonly candidates: readonly Candidate[];
  /** One candidate stands clear of the others, and most of the words went into it. */
  readonly certain: boolean;
};

/** One row of a chart: a cavity, or a flying lead. */
export type Lead = {
  /** Names the lead within its chart: the cavity label, or the colour's IEC 60757 letters where there is none. */
  readonly name: string;
  /** What the housing prints beside the cavity; `null` where the chart names none. */
  readonly label: string | null;
  /** The chart's own wording of what it is for, as written. */
  readonly text: string;
  readonly reading: FunctionReading;
  readonly colour: Colour | null;
  /** The colour as written, where one is: "lt grn". */
  readonly colourText: string;
  readonly area_mm2: number | null;
  readonly current_A: number | null;
  readonly fuse_A: number | null;
  /** As the chart states it, seen from its own side; `unknown` where it does not. */
  readonly direction: Direction;
  /** The chart says that nothing is there. */
  readonly isUnused: boolean;
  /** What stood in the row and went into none of the above. */
  readonly kept: readonly string[];
  /** The line of the text or the row of the sheet, from 1. */
  readonly line: number;
  /** The whole row as written. */
  readonly source: string;
};

/** A line that is no lead. */
export type ChartLine = { readonly line: number; readonly text: string };

export type Chart = {
  /** The first title line, if there is one. */
  readonly title: string;
  readonly leads: readonly Lead[];
  /** Lines that are no rows: titles, remarks. */
  readonly notes: readonly ChartLine[];
  /** Lines that look like rows and could not be read. */
  readonly unread: readonly ChartLine[];
};

/** Everything that one text or file gave: one chart, or two that stood side by side. */
export type ReadCharts = {
  readonly charts: readonly Chart[];
  /** What a person should know before they trust it: how a doubtful letter was taken, what was cut off. */
  readonly remarks: readonly string[];
};
