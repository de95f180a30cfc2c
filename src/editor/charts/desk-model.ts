import type { Ready } from "../../catalogue/ready.ts";
import { mirrored } from "../../graph/edits/housing.ts";
import type { Connector, Harness, JobSide, PartId } from "../../graph/harness.ts";
import { Names } from "../../graph/make.ts";
import type { Chart } from "../../match/chart.ts";
import { EMPTY_CHART, type MendedChart, type Mends, mend, NO_MENDS } from "../../match/review/mend.ts";
import { type Review, SIDES, type SideName } from "../../match/review/review.ts";
import { isLeadsOnly, statedView } from "../../match/review/stated-view.ts";
import type { JobEnd, JobEnds } from "../../match/review/to-edit.ts";

/** Where a side's chart comes from. `beside`: the text of the other side held both. */
export type Source =
  | { readonly kind: "none" | "rows" | "beside" }
  | { readonly kind: "text"; readonly fileName: string | null }
  | { readonly kind: "ready"; readonly ready: Ready }
  | { readonly kind: "connector"; readonly part: PartId };

/** One side of the job while its chart is taken in. Plain data: it is kept as it is. */
export type ChartSide = {
  readonly source: Source;
  readonly text: string;
  /** The charts that the source gave, and which of them is this side's. */
  readonly read: readonly Chart[];
  readonly which: number;
  readonly remarks: readonly string[];
  readonly mends: Mends;
  readonly showText: boolean;
  readonly designation: string;
  readonly name: string;
  readonly view: Connector["view"] | null;
  readonly rows: string;
};

export type Desk = {
  readonly step: "charts" | "review";
  readonly sides: Readonly<Record<SideName, ChartSide>>;
  readonly review: Review | null;
};

export const JOB_SIDE: Readonly<Record<SideName, JobSide>> = { left: "vehicle", right: "equipment" };
export const SIDE_NAMES: Readonly<Record<SideName, string>> = { left: "The vehicle", right: "The new unit" };

/** An empty desk with the next two free designations. */
export function emptyDesk(harness: Harness): Desk {
  const names = new Names(harness);
  const side = (): ChartSide => ({ ...BLANK, designation: names.designation("connector") });
  return { step: "charts", sides: { left: side(), right: side() }, review: null };
}

const BLANK: Omit<ChartSide, "designation"> = {
  source: { kind: "none" },
  text: "",
  read: [],
  which: 0,
  remarks: [],
  mends: NO_MENDS,
  showText: true,
  name: "",
  view: null,
  rows: "1",
};

/** A side with nothing on it; the designation and the name that were typed stay. */
export function clearedSide(side: ChartSide, free: string): ChartSide {
  const typed =
    side.source.kind === "connector"
      ? { designation: free, name: "" }
      : { designation: side.designation, name: side.name };
  return { ...BLANK, ...typed };
}

const mended = new WeakMap<Chart, WeakMap<Mends, MendedChart>>();

/** The side's chart as mended; the same objects while nothing was corrected. */
export function chartOf({ read, which, mends }: Pick<ChartSide, "read" | "which" | "mends">): MendedChart {
  const chart = read[which] ?? EMPTY_CHART;
  const known = mended.get(chart) ?? new WeakMap<Mends, MendedChart>();
  mended.set(chart, known);
  const made = known.get(mends) ?? mend(chart, mends);
  known.set(mends, made);
  return made;
}

/** From where the cavities are seen: as chosen, or as the chart or the connector says; `null`: to be asked. */
export function viewOf(
  side: ChartSide,
  harness: Harness,
): { view: Connector["view"]; from: "person" | "chart" | "harness" | "leads" } | null {
  if (side.source.kind === "connector") {
    const part = harness.parts[side.source.part];
    return part?.kind === "connector" ? { view: part.view, from: "harness" } : null;
  }
  if (side.view) return { view: side.view, from: "person" };
  const { chart } = chartOf(side);
  // A flying lead has no face; what is stored then says nothing.
  if (isLeadsOnly(chart) || (side.source.kind === "ready" && side.source.ready.form === "flying-leads"))
    return { view: "wire-side", from: "leads" };
  const stated = statedView(chart);
  return stated ? { view: stated, from: "chart" } : null;
}

export type Need = {
  readonly side: SideName;
  readonly what: "chart" | "designation" | "view";
  readonly why: string;
};

/** What is still missing before joins can be proposed and made, in the order in which it is asked for. */
export function needsOf(desk: Desk, harness: Harness): readonly Need[] {
  const needs: Need[] = [];
  const taken = new Set(Object.values(harness.parts).map((part) => part.designation));
  for (const side of SIDES) {
    if (chartOf(desk.sides[side]).chart.leads.length === 0)
      needs.push({ side, what: "chart", why: `${SIDE_NAMES[side]} has no chart yet.` });
  }
  const [left, right] = SIDES.map((side) => desk.sides[side]);
  if (
    left?.source.kind === "connector" &&
    right?.source.kind === "connector" &&
    left.source.part === right.source.part
  )
    needs.push({ side: "right", what: "chart", why: "Both sides are the same connector." });
  for (const side of SIDES) {
    const one = desk.sides[side];
    if (one.source.kind !== "connector") {
      const name = one.designation.trim();
      if (name === "") needs.push({ side, what: "designation", why: "It needs a designation, like X1." });
      else if (taken.has(name))
        needs.push({ side, what: "designation", why: `Another part is called ${name}.` });
      else if (side === "right" && left?.source.kind !== "connector" && name === left?.designation.trim())
        needs.push({ side, what: "designation", why: `Both sides are called ${name}.` });
    }
  }
  for (const side of SIDES) {
    if (!viewOf(desk.sides[side], harness))
      needs.push({
        side,
        what: "view",
        why: "Say from which side you see the cavities: the other way round is a mirror image.",
      });
  }
  return needs;
}

/** What each side becomes when the review is accepted; `null` where something is still missing. */
export function endsOf(desk: Desk, harness: Harness): JobEnds | null {
  const [left, right] = SIDES.map((side) => endOf(desk.sides[side], side, harness));
  return left && right ? { left, right } : null;
}

function endOf(side: ChartSide, name: SideName, harness: Harness): JobEnd | null {
  if (side.source.kind === "connector") return { part: side.source.part };
  const seen = viewOf(side, harness);
  if (!seen) return null;
  const { chart } = chartOf(side);
  const ready = side.source.kind === "ready" ? side.source.ready : null;
  // Rows that were added or set aside no longer stand where the face has them.
  const face = ready?.face && chart.leads.length === ready.cavities.length ? ready.face : null;
  const rowCount = Number(side.rows.trim());
  const title = chart.title.slice(0, 400);
  return {
    part: null,
    side: JOB_SIDE[name],
    designation: side.designation,
    name: side.name,
    view: seen.view,
    form: ready?.form ?? (isLeadsOnly(chart) ? "flying-leads" : "housing"),
    shell: ready?.shell ?? null,
    rows: face
      ? face.view === seen.view
        ? face.rows
        : mirrored(face.rows)
      : Number.isInteger(rowCount) && rowCount > 0 && rowCount <= 60
        ? rowCount
        : 1,
    chart: ready ? ready.chart : title === "" ? null : { title, edition: "", date: "", measured: false },
  };
}

/** The line of a text replaced by another; line ends stay as they were. */
export function withLine(text: string, line: number, replacement: string): string {
  const parts = text.split(/(\r\n|\r|\n)/);
  const at = (line - 1) * 2;
  if (at < 0 || at >= parts.length)
    return `${text}${text === "" || text.endsWith("\n") ? "" : "\n"}${replacement}`;
  parts[at] = replacement;
  return parts.join("");
}

/** True where there is nothing on the desk that a person would miss. */
export function isBare({ sides }: Desk): boolean {
  return SIDES.every(
    (name) => sides[name].source.kind === "none" && sides[name].text === "" && sides[name].name === "",
  );
}

/** The connectors that the review starts on: those selected, or the only one of each side. */
export function connectorsFor(
  harness: Harness,
  selected: ReadonlySet<PartId>,
): Readonly<Record<SideName, PartId | null>> {
  const all = Object.values(harness.parts).filter((part) => part.kind === "connector");
  const picked = all.filter((part) => selected.has(part.id));
  if (picked.length === 2) {
    const [a, b] = picked as [Connector, Connector];
    const turned = a.belongsTo.side === "equipment" && b.belongsTo.side === "vehicle";
    return turned ? { left: b.id, right: a.id } : { left: a.id, right: b.id };
  }
  const only = (side: JobSide): PartId | null => {
    const here = all.filter((part) => part.belongsTo.side === side);
    const chosen = here.filter((part) => selected.has(part.id));
    if (chosen.length === 1) return chosen[0]!.id;
    return here.length === 1 ? here[0]!.id : null;
  };
  return { left: only("vehicle"), right: only("equipment") };
}
