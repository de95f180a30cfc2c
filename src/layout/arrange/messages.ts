import type { Arranged, ArrangeProblem } from "./types.ts";

/** What the page asks of the worker. `warm` has no answer: it only makes the first real job quick. */
export type Ask =
  | { readonly kind: "warm" }
  | { readonly kind: "arrange"; readonly job: number; readonly problem: ArrangeProblem };

export type Answer =
  | { readonly kind: "step"; readonly job: number; readonly done: number; readonly of: number }
  | { readonly kind: "arranged"; readonly job: number; readonly arranged: Arranged }
  | { readonly kind: "failed"; readonly job: number; readonly why: string };
