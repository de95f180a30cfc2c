import { operate } from "../../electrical/operate/operate.ts";
import type { Readings } from "../../electrical/operate/readings.ts";
import { trace } from "../../graph/trace.ts";
import type { Question } from "./readings-store.ts";
import { amplified, askOf } from "./what-if.ts";

export type Ask = { readonly job: number; readonly question: Question };
export type Answer = {
  readonly job: number;
  readonly readings: Readings | null;
  readonly problem: string | null;
};

let before: Readings | null = null;

self.addEventListener("message", ({ data }: MessageEvent<Ask>) => {
  const { job, question } = data;
  const send = (answer: Omit<Answer, "job">): void => self.postMessage({ job, ...answer });
  try {
    const harness = amplified(question.harness, question.whatIf);
    before = operate(harness, trace(harness), question.state, { ...askOf(question.whatIf), before });
    send({ readings: before, problem: null });
  } catch (error) {
    send({ readings: null, problem: error instanceof Error ? error.message : String(error) });
  }
});
