import type { Chart, ReadCharts } from "../../match/chart.ts";
import type { Proposal } from "../../match/propose/proposal.ts";

type Sizes = { readonly sizes: "metric" | "awg" };

/** What the page asks of the worker. */
export type Ask =
  | ({ readonly kind: "text"; readonly text: string } & Sizes)
  | ({ readonly kind: "file"; readonly bytes: ArrayBuffer } & Sizes)
  | { readonly kind: "propose"; readonly left: Chart; readonly right: Chart };

/** What a file or a text gave. `text` is a file's own text; "" for a workbook. What the page sent it knows itself. */
export type ReadAnswer = { readonly read: ReadCharts; readonly text: string | null };

export type Answer =
  | { readonly job: number; readonly ok: true; readonly value: ReadAnswer | Proposal }
  | { readonly job: number; readonly ok: false; readonly why: string };
