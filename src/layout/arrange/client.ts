import type { Answer, Ask } from "./messages.ts";
import type { Arranged, ArrangeProblem } from "./types.ts";

export type ArrangeProgress = {
  readonly elapsed_ms: number;
  /** Connected pieces arranged, and how many there are. */
  readonly done: number;
  readonly of: number;
};

export type ArrangeRequest = {
  readonly signal?: AbortSignal;
  readonly onProgress?: (progress: ArrangeProgress) => void;
};

export type Arranger = {
  /**
   * Arranges in a worker; the page is not held up. A newer call cancels this one.
   * @throws DOMException "AbortError" when cancelled; Error when ELK or the worker fails
   */
  readonly arrange: (problem: ArrangeProblem, request?: ArrangeRequest) => Promise<Arranged>;
  /** Starts the worker ahead of need: its first job is otherwise a second late. Call it when the page is idle. */
  readonly warm: () => void;
  /** Cancels what runs and ends the worker. */
  readonly dispose: () => void;
};

/** The part of a Worker that is used here; tests bring their own. */
export type ArrangeWorker = Pick<Worker, "postMessage" | "terminate" | "onmessage" | "onerror">;

/** A person is not told of work that is over before they would wonder. */
const QUIET_MS = 300;
const PROGRESS_EVERY_MS = 100;

type Job = {
  readonly number: number;
  readonly started_ms: number;
  readonly resolve: (arranged: Arranged) => void;
  readonly reject: (reason: unknown) => void;
  readonly end: () => void;
  steps: { readonly done: number; readonly of: number };
};

/** One worker, started when first needed and again after a cancel, which ends it at once. */
export function createArranger(startWorker: () => ArrangeWorker = startModuleWorker): Arranger {
  let worker: ArrangeWorker | null = null;
  let job: Job | null = null;
  let count = 0;

  const start = (): ArrangeWorker => {
    if (worker) return worker;
    worker = startWorker();
    worker.onmessage = ({ data }: MessageEvent<Answer>) => receive(data);
    worker.onerror = (event) => {
      stopWorker();
      finish((one) =>
        one.reject(new Error(`The arranging worker failed: ${event.message ?? "no reason given"}`)),
      );
    };
    return worker;
  };
  const stopWorker = (): void => {
    worker?.terminate();
    worker = null;
  };
  const finish = (tell: (job: Job) => void): void => {
    const one = job;
    job = null;
    one?.end();
    if (one) tell(one);
  };
  const receive = (answer: Answer): void => {
    if (answer.job !== job?.number) return;
    if (answer.kind === "step") job.steps = answer;
    else if (answer.kind === "arranged") finish((one) => one.resolve(answer.arranged));
    else finish((one) => one.reject(new Error(`Arranging failed: ${answer.why}`)));
  };
  const cancel = (reason: unknown): void => {
    if (!job) return;
    stopWorker();
    finish((one) => one.reject(reason));
  };
  const ask = (message: Ask): void => start().postMessage(message);

  return {
    arrange(problem, { signal, onProgress } = {}) {
      cancel(new DOMException("A newer arrangement was asked for", "AbortError"));
      return new Promise<Arranged>((resolve, reject) => {
        if (signal?.aborted) {
          reject(signal.reason);
          return;
        }
        const started_ms = performance.now();
        const number = ++count;
        const onAbort = (): void => cancel(signal?.reason);
        signal?.addEventListener("abort", onAbort, { once: true });
        let timer: ReturnType<typeof setTimeout> | null = null;
        const report = (): void => {
          if (job?.number !== number) return;
          onProgress?.({ elapsed_ms: performance.now() - started_ms, ...stepsOf(job) });
          if (job?.number === number) timer = setTimeout(report, PROGRESS_EVERY_MS);
        };
        if (onProgress) timer = setTimeout(report, QUIET_MS);
        const end = (): void => {
          if (timer !== null) clearTimeout(timer);
          signal?.removeEventListener("abort", onAbort);
        };
        job = { number, started_ms, resolve, reject, end, steps: { done: 0, of: 1 } };
        try {
          ask({ kind: "arrange", job: number, problem });
        } catch (error) {
          finish((one) => one.reject(error));
        }
      });
    },
    warm() {
      if (!worker) ask({ kind: "warm" });
    },
    dispose() {
      cancel(new DOMException("The arranger was closed", "AbortError"));
      stopWorker();
    },
  };
}

const stepsOf = ({ steps: { done, of } }: Job) => ({ done, of });

function startModuleWorker(): ArrangeWorker {
  return new Worker(new URL("./arrange.worker.ts", import.meta.url), { type: "module", name: "arrange" });
}
