import type { Chart } from "../../match/chart.ts";
import type { Proposal } from "../../match/propose/proposal.ts";
import type { Answer, Ask, ReadAnswer } from "./messages.ts";

type Sizes = "metric" | "awg";

/** Reads charts and proposes joins, off the page's own thread: a paste of any size holds nothing up. */
export type Engine = {
  readText(text: string, sizes: Sizes): Promise<ReadAnswer>;
  readFile(bytes: ArrayBuffer, sizes: Sizes): Promise<ReadAnswer>;
  propose(left: Chart, right: Chart): Promise<Proposal>;
  /** Ends the worker and whatever it is at; what was asked of it is never answered. */
  stop(): void;
};

type Waiting = {
  readonly resolve: (value: ReadAnswer | Proposal) => void;
  readonly reject: (why: Error) => void;
};

export function createEngine(
  startWorker: () => Worker = () =>
    new Worker(new URL("./charts.worker.ts", import.meta.url), { type: "module", name: "charts" }),
): Engine {
  let worker: Worker | null = null;
  let count = 0;
  const waiting = new Map<number, Waiting>();
  const started = (): Worker => {
    if (worker) return worker;
    worker = startWorker();
    worker.onmessage = ({ data }: MessageEvent<Answer>) => {
      const one = waiting.get(data.job);
      waiting.delete(data.job);
      if (data.ok) one?.resolve(data.value);
      else one?.reject(new Error(data.why));
    };
    worker.onerror = (event) => {
      worker?.terminate();
      worker = null;
      const failed = [...waiting.values()];
      waiting.clear();
      for (const one of failed) one.reject(new Error(event.message || "The chart could not be read."));
    };
    return worker;
  };
  const ask = <T extends ReadAnswer | Proposal>(what: Ask): Promise<T> =>
    new Promise((resolve, reject) => {
      const job = ++count;
      waiting.set(job, { resolve: resolve as Waiting["resolve"], reject });
      started().postMessage({ job, ...what });
    });
  return {
    readText: (text, sizes) => ask({ kind: "text", text, sizes }),
    readFile: (bytes, sizes) => ask({ kind: "file", bytes, sizes }),
    propose: (left, right) => ask({ kind: "propose", left, right }),
    stop() {
      worker?.terminate();
      worker = null;
      waiting.clear();
    },
  };
}
