import { digits } from "../../../electrical/figure.ts";
import { dropOf, dropsOf, type LoadDrop, nameLoad } from "../../../electrical/operate/drop.ts";
import type { Step } from "../../../electrical/operate/path.ts";
import type { Readings } from "../../../electrical/operate/readings.ts";
import { type ContactKey, refOfKey } from "../../../graph/contacts.ts";
import type { About } from "../../../rules/rule.ts";
import { type FigureLine, sayAmps, sayFigure } from "./figure-line.ts";
import type { Subject } from "./selection-model.ts";

/** One stretch of the way as a row and as a piece of the bar. */
export type BudgetRow = {
  readonly id: string;
  readonly name: string;
  readonly side: Step["side"];
  readonly about: readonly About[];
  readonly amps: string;
  readonly drop: string;
  /** Where its piece of the bar begins and how long it is, per cent of the bar's length. */
  readonly from_percent: number;
  readonly long_percent: number;
};

export type BudgetView = {
  readonly load: ContactKey;
  readonly name: string;
  /** "0.31 V of 0.40 V; 0.18 V of it in the shared ground lead W7" */
  readonly words: string;
  readonly within: boolean;
  readonly verdict: string;
  readonly rows: readonly BudgetRow[];
  /** Where the limit stands on the bar, per cent of its length. */
  readonly limit_percent: number;
  readonly limit: FigureLine;
};

/** A load's budget made ready to be drawn: the bar is as long as the larger of the drop and the limit. */
export function budgetView(readings: Readings, { path, budget, limit }: LoadDrop): BudgetView {
  const whole_V = Math.max(budget.total_V, budget.limit_V);
  let from_V = 0;
  const rows = path.steps.map((step): BudgetRow => {
    const row: BudgetRow = {
      id: String(step.element),
      name: step.name,
      side: step.side,
      about: step.wire ? [{ wire: step.wire }] : step.part ? [{ part: step.part }] : [],
      amps: sayAmps(step.amps),
      drop: `${step.drop_V.toFixed(3)} V`,
      from_percent: (from_V / whole_V) * 100,
      long_percent: (step.drop_V / whole_V) * 100,
    };
    from_V += step.drop_V;
    return row;
  });
  const left = sayFigure({ value: Math.abs(budget.left_V), unit: "V" });
  return {
    load: path.load,
    name: nameLoad(readings.solved.harness, path.load),
    words: budget.words,
    within: budget.within,
    verdict: budget.within ? `Within its budget; ${left} left.` : `Over its budget by ${left}.`,
    rows,
    limit_percent: (budget.limit_V / whole_V) * 100,
    limit: { id: "limit", name: "What it may lose", answer: limit },
  };
}

/** The budgets that a selection has to do with, the tightest first. */
export function budgetsOf(readings: Readings, subject: Subject): readonly LoadDrop[] {
  if (subject.kind === "wire") {
    const { id } = subject.wire;
    return dropsOf(readings).filter(({ path }) => path.steps.some(({ wire }) => wire === id));
  }
  if (subject.kind !== "part") return [];
  const { part, contact } = subject;
  const own = [...readings.loads.keys()].filter((key) => {
    const ref = refOfKey(key);
    return ref.part === part.id && (!contact || part.kind === "load" || ref.contact === contact.contact);
  });
  if (own.length > 0 || part.kind === "load")
    return own.flatMap((key) => dropOf(readings, key) ?? []).sort(tightestFirst);
  if (part.kind === "connector" || part.kind === "module" || part.kind === "supply") return [];
  return dropsOf(readings).filter(({ path }) => path.steps.some((step) => step.part === part.id));
}

function tightestFirst(a: LoadDrop, b: LoadDrop): number {
  return b.budget.total_V / b.budget.limit_V - a.budget.total_V / a.budget.limit_V;
}

/** Per cent of its budget that a load uses, rounded, for a table. */
export function usedPercent({ budget }: LoadDrop): string {
  return `${digits((budget.total_V / budget.limit_V) * 100, 3)} %`;
}
