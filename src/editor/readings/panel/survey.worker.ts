import type { Harness } from "../../../graph/harness.ts";
import { type SizesView, sizesView } from "./sizes-model.ts";
import { type WholeView, wholeView } from "./whole-model.ts";

export type SurveyAsk = {
  readonly job: number;
  readonly kind: "sizes" | "whole";
  readonly harness: Harness;
  readonly shrink: boolean;
};
export type SurveyAnswer = {
  readonly job: number;
  readonly sizes: SizesView | null;
  readonly whole: WholeView | null;
  readonly problem: string | null;
};

self.addEventListener("message", ({ data }: MessageEvent<SurveyAsk>) => {
  const { job, kind, harness, shrink } = data;
  const send = (answer: Omit<SurveyAnswer, "job">): void => self.postMessage({ job, ...answer });
  try {
    send({
      sizes: kind === "sizes" ? sizesView(harness, shrink) : null,
      whole: kind === "whole" ? wholeView(harness) : null,
      problem: null,
    });
  } catch (error) {
    send({ sizes: null, whole: null, problem: error instanceof Error ? error.message : String(error) });
  }
});
