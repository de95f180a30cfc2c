import { operate } from "../../electrical/operate/operate.ts";
import type { Readings } from "../../electrical/operate/readings.ts";
import type { Question, Reckoner } from "./readings-store.ts";
import type { Answer } from "./reckoner.worker.ts";
import { amplified, askOf } from "./what-if.ts";

/** The part of a Worker that is used here; tests bring their own. */
export type ReckonerWorker = Pick<Worker, "postMessage" | "terminate" | "onmessage" | "onerror">;

type Waiting = {
  readonly question: Question;
  readonly answer: (readings: Readings | null, problem: string | null) => void;
};

/** How long the worker may still be at an older question before it is ended for a newer one. */
const PATIENCE_MS = 250;

/** Works out readings: small harnesses at once, large ones in a worker that answers the newest question only. */
export function createReckoner(startWorker: () => ReckonerWorker = startModuleWorker): Reckoner {
  let worker: ReckonerWorker | null = null;
  let running: (Waiting & { readonly job: number }) | null = null;
  let next: Waiting | null = null;
  let impatient: ReturnType<typeof setTimeout> | null = null;
  let jobs = 0;

  const end = (): void => {
    worker?.terminate();
    worker = null;
    running = null;
  };
  const begin = (waiting: Waiting): void => {
    next = null;
    if (impatient !== null) clearTimeout(impatient);
    impatient = null;
    worker ??= listenTo(startWorker());
    running = { ...waiting, job: ++jobs };
    worker.postMessage({ job: running.job, question: waiting.question });
  };
  const listenTo = (started: ReckonerWorker): ReckonerWorker => {
    started.onmessage = ({ data }: MessageEvent<Answer>) => {
      if (data.job !== running?.job) return;
      const { answer } = running;
      running = null;
      if (next) begin(next);
      else answer(data.readings, data.problem);
    };
    started.onerror = (event) => {
      const waiting = next ?? running;
      end();
      next = null;
      waiting?.answer(null, `The worker failed: ${event.message || "no reason given"}`);
    };
    return started;
  };
  return {
    now(question, traced, before) {
      const harness = amplified(question.harness, question.whatIf);
      return operate(harness, traced, question.state, { ...askOf(question.whatIf), before });
    },
    later(question, answer) {
      const waiting = { question, answer };
      if (!running) {
        begin(waiting);
        return;
      }
      next = waiting;
      impatient ??= setTimeout(() => {
        impatient = null;
        if (!next) return;
        end();
        begin(next);
      }, PATIENCE_MS);
    },
    stop() {
      if (impatient !== null) clearTimeout(impatient);
      impatient = null;
      next = null;
      end();
    },
  };
}

function startModuleWorker(): ReckonerWorker {
  return new Worker(new URL("./reckoner.worker.ts", import.meta.url), { type: "module", name: "readings" });
}
