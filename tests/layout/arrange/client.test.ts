import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import {
  type ArrangeProgress,
  type ArrangeWorker,
  createArranger,
} from "../../../src/layout/arrange/client.ts";
import type { Answer, Ask } from "../../../src/layout/arrange/messages.ts";
import type { Arranged, ArrangeProblem } from "../../../src/layout/arrange/types.ts";

const problem: ArrangeProblem = { blocks: [], wires: [] };
const arranged: Arranged = { places: new Map([["a", { x: 8, y: 16 }]]), paths: new Map(), turned: new Set() };

/** Stands in for the worker: keeps what it was asked, answers when the test says so. */
class FakeWorker implements ArrangeWorker {
  static all: FakeWorker[] = [];
  onmessage: ArrangeWorker["onmessage"] = null;
  onerror: ArrangeWorker["onerror"] = null;
  asked: Ask[] = [];
  terminated = false;
  constructor() {
    FakeWorker.all.push(this);
  }
  postMessage(message: Ask): void {
    this.asked.push(message);
  }
  terminate(): void {
    this.terminated = true;
  }
  answer(data: Answer): void {
    this.onmessage?.call(this as unknown as Worker, { data } as MessageEvent<Answer>);
  }
  get job(): number {
    const last = this.asked.at(-1);
    return last?.kind === "arrange" ? last.job : -1;
  }
}

const start = () => new FakeWorker();

beforeEach(() => {
  FakeWorker.all = [];
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

describe("the arranger's client", () => {
  test("starts no worker before it is needed, and keeps the one it has", async () => {
    const arranger = createArranger(start);
    expect(FakeWorker.all).toHaveLength(0);
    arranger.warm();
    arranger.warm();
    const [worker] = FakeWorker.all;
    expect(worker!.asked).toEqual([{ kind: "warm" }]);
    const result = arranger.arrange(problem);
    worker!.answer({ kind: "arranged", job: worker!.job, arranged });
    expect(await result).toBe(arranged);
    expect(FakeWorker.all).toHaveLength(1);
  });

  test("a cancel ends the worker at once; the next call starts another", async () => {
    const arranger = createArranger(start);
    const cancel = new AbortController();
    const first = arranger.arrange(problem, { signal: cancel.signal });
    cancel.abort();
    expect(FakeWorker.all[0]!.terminated).toBe(true);
    await expect(first).rejects.toMatchObject({ name: "AbortError" });
    const second = arranger.arrange(problem);
    expect(FakeWorker.all).toHaveLength(2);
    FakeWorker.all[1]!.answer({ kind: "arranged", job: FakeWorker.all[1]!.job, arranged });
    expect(await second).toBe(arranged);
  });

  test("one that is cancelled beforehand disturbs nothing", async () => {
    const arranger = createArranger(start);
    await expect(arranger.arrange(problem, { signal: AbortSignal.abort() })).rejects.toMatchObject({
      name: "AbortError",
    });
    expect(FakeWorker.all).toHaveLength(0);
  });

  test("a cancel after the end changes nothing", async () => {
    const arranger = createArranger(start);
    const cancel = new AbortController();
    const result = arranger.arrange(problem, { signal: cancel.signal });
    FakeWorker.all[0]!.answer({ kind: "arranged", job: 1, arranged });
    await result;
    cancel.abort();
    expect(FakeWorker.all[0]!.terminated).toBe(false);
  });

  test("a newer call cancels the older one", async () => {
    const arranger = createArranger(start);
    const older = arranger.arrange(problem);
    const newer = arranger.arrange(problem);
    await expect(older).rejects.toMatchObject({ name: "AbortError" });
    FakeWorker.all[1]!.answer({ kind: "arranged", job: FakeWorker.all[1]!.job, arranged });
    expect(await newer).toBe(arranged);
  });

  test("progress is told after 300 ms and not before, and stops at the end", async () => {
    const arranger = createArranger(start);
    const told: ArrangeProgress[] = [];
    const result = arranger.arrange(problem, { onProgress: (progress) => told.push(progress) });
    const worker = FakeWorker.all[0]!;
    worker.answer({ kind: "step", job: worker.job, done: 2, of: 5 });
    vi.advanceTimersByTime(299);
    expect(told).toEqual([]);
    vi.advanceTimersByTime(1);
    expect(told).toMatchObject([{ done: 2, of: 5 }]);
    expect(told[0]!.elapsed_ms).toBeGreaterThanOrEqual(300);
    worker.answer({ kind: "step", job: worker.job, done: 3, of: 5 });
    vi.advanceTimersByTime(100);
    expect(told.at(-1)).toMatchObject({ done: 3, of: 5 });
    worker.answer({ kind: "arranged", job: worker.job, arranged });
    await result;
    vi.advanceTimersByTime(5_000);
    expect(told).toHaveLength(2);
  });

  test("a failure says why, and the next call works", async () => {
    const arranger = createArranger(start);
    const first = arranger.arrange(problem);
    FakeWorker.all[0]!.answer({ kind: "failed", job: 1, why: "no layout" });
    await expect(first).rejects.toThrow("no layout");
    const second = arranger.arrange(problem);
    FakeWorker.all[0]!.onerror?.call({} as Worker, { message: "out of memory" } as ErrorEvent);
    await expect(second).rejects.toThrow("out of memory");
    const third = arranger.arrange(problem);
    FakeWorker.all[1]!.answer({ kind: "arranged", job: FakeWorker.all[1]!.job, arranged });
    expect(await third).toBe(arranged);
  });

  test("closing it cancels and ends the worker", async () => {
    const arranger = createArranger(start);
    const result = arranger.arrange(problem);
    arranger.dispose();
    await expect(result).rejects.toMatchObject({ name: "AbortError" });
    expect(FakeWorker.all[0]!.terminated).toBe(true);
  });
});
