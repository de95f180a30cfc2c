import { useEffect, useRef, useState } from "react";
import type { Harness } from "../../../graph/harness.ts";
import { useEditor } from "../../state/use-editor.ts";
import type { SurveyAnswer, SurveyAsk } from "./survey.worker.ts";

export type Survey = {
  /** Of the harness as it is, or of a moment ago while `busy`. */
  readonly answer: SurveyAnswer | null;
  /** The harness that the answer is of. */
  readonly of: Harness | null;
  readonly busy: boolean;
};

type Asked = Omit<SurveyAsk, "job">;

/**
 * Works a page of the whole harness out in a worker, again after each edit that changes it. The newest question only is
 * answered: one that is overtaken is not waited for.
 */
export function useSurvey(kind: SurveyAsk["kind"], shrink = false): Survey {
  const harness = useSettled(useEditor((state) => state.history.present));
  const [survey, setSurvey] = useState<Survey>({ answer: null, of: null, busy: true });
  const line = useRef<ReturnType<typeof openLine> | null>(null);
  useEffect(() => {
    line.current = openLine();
    return () => line.current?.close();
  }, []);
  useEffect(() => {
    setSurvey((known) => ({ ...known, busy: true }));
    line.current?.ask({ kind, harness, shrink }, (answer) => setSurvey({ answer, of: harness, busy: false }));
  }, [kind, harness, shrink]);
  return survey;
}

/** The same harness again where an edit moved things about only. */
function useSettled(harness: Harness): Harness {
  const kept = useRef(harness);
  const { parts, wires, runs, settings } = kept.current;
  if (
    harness.parts !== parts ||
    harness.wires !== wires ||
    harness.runs !== runs ||
    harness.settings !== settings
  )
    kept.current = harness;
  return kept.current;
}

/** A worker that answers the newest question. */
function openLine() {
  let worker: Worker | null = null;
  let jobs = 0;
  let waiting: { asked: Asked; answer: (answer: SurveyAnswer) => void } | null = null;
  let running = false;
  const next = (): void => {
    if (!waiting || running) return;
    const { asked, answer } = waiting;
    waiting = null;
    running = true;
    const job = ++jobs;
    const end = (told: SurveyAnswer): void => {
      running = false;
      if (!waiting) answer(told);
      next();
    };
    worker ??= new Worker(new URL("./survey.worker.ts", import.meta.url), {
      type: "module",
      name: "survey",
    });
    worker.onmessage = ({ data }: MessageEvent<SurveyAnswer>) => {
      if (data.job === job) end(data);
    };
    worker.onerror = ({ message }) => {
      worker?.terminate();
      worker = null;
      end({ job, sizes: null, whole: null, problem: `It could not be worked out: ${message}` });
    };
    worker.postMessage({ ...asked, job } satisfies SurveyAsk);
  };
  return {
    ask(asked: Asked, answer: (answer: SurveyAnswer) => void) {
      waiting = { asked, answer };
      next();
    },
    close() {
      worker?.terminate();
      worker = null;
      waiting = null;
    },
  };
}
