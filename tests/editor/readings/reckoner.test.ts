import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { AS_IT_IS, AT_FIRST, type Question } from "../../../src/editor/readings/readings-store.ts";
import { createReckoner, type ReckonerWorker } from "../../../src/editor/readings/reckoner.ts";
import { emptyHarness } from "../../../src/graph/make.ts";

type Sent = { readonly job: number; readonly question: Question };

function fakeWorkers() {
  const workers: { sent: Sent[]; ended: boolean; worker: ReckonerWorker }[] = [];
  const start = (): ReckonerWorker => {
    const one = { sent: [] as Sent[], ended: false } as (typeof workers)[number];
    one.worker = {
      postMessage: (message: Sent) => void one.sent.push(message),
      terminate: () => {
        one.ended = true;
      },
      onmessage: null,
      onerror: null,
    } as ReckonerWorker;
    workers.push(one);
    return one.worker;
  };
  const reply = (index: number, job: number): void => {
    const { worker } = workers[index]!;
    worker.onmessage?.call(
      worker as Worker,
      { data: { job, readings: null, problem: null } } as MessageEvent,
    );
  };
  return { workers, start, reply };
}

const ask = (key: "off" | "run" | "crank"): Question => ({
  harness: emptyHarness(),
  state: { ...AT_FIRST, key },
  whatIf: AS_IT_IS,
});

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

test("while one question runs, only the newest of the others waits", () => {
  const { workers, start, reply } = fakeWorkers();
  const reckoner = createReckoner(start);
  const answers: string[] = [];
  for (const key of ["run", "off", "crank"] as const) reckoner.later(ask(key), () => answers.push(key));
  expect(workers[0]!.sent.map(({ question }) => question.state.key)).toEqual(["run"]);
  reply(0, workers[0]!.sent[0]!.job);
  expect(workers[0]!.sent.map(({ question }) => question.state.key)).toEqual(["run", "crank"]);
  reply(0, workers[0]!.sent[1]!.job);
  expect(answers).toEqual(["crank"]);
  expect(workers).toHaveLength(1);
});

test("a worker that is long at an older question is ended for the newer one", () => {
  const { workers, start, reply } = fakeWorkers();
  const reckoner = createReckoner(start);
  const answers: string[] = [];
  reckoner.later(ask("run"), () => answers.push("run"));
  reckoner.later(ask("off"), () => answers.push("off"));
  vi.advanceTimersByTime(1000);
  expect(workers.map(({ ended }) => ended)).toEqual([true, false]);
  reply(1, workers[1]!.sent[0]!.job);
  expect(answers).toEqual(["off"]);
});

test("when nothing is waited for any more, the worker that runs is ended", () => {
  const { workers, start } = fakeWorkers();
  const reckoner = createReckoner(start);
  const answer = vi.fn();
  reckoner.later(ask("run"), answer);
  reckoner.stop();
  expect(workers[0]!.ended).toBe(true);
  expect(answer).not.toHaveBeenCalled();
});

test("an idle worker is ended as well", () => {
  const { workers, start, reply } = fakeWorkers();
  const reckoner = createReckoner(start);
  reckoner.later(ask("run"), vi.fn());
  reply(0, workers[0]!.sent[0]!.job);
  reckoner.stop();
  expect(workers[0]!.ended).toBe(true);
});

test("a worker that fails says so to who waits", () => {
  const { workers, start } = fakeWorkers();
  const reckoner = createReckoner(start);
  const answer = vi.fn();
  reckoner.later(ask("run"), answer);
  const { worker } = workers[0]!;
  worker.onerror?.call(worker as Worker, { message: "out of memory" } as ErrorEvent);
  expect(answer).toHaveBeenCalledWith(null, "The worker failed: out of memory");
});
