import { apply } from "./edits/apply.ts";
import { type Edit, nameOfEdit, type Refused } from "./edits/edit.ts";
import type { Harness } from "./harness.ts";

type Step = { readonly name: string; readonly harness: Harness };

/** Every earlier harness is kept; they share what did not change, so a step costs what the edit touched. */
export type History = {
  readonly present: Harness;
  /** The steps that can be undone, oldest first: the name of the edit and the harness before it. */
  readonly past: readonly Step[];
  /** The steps that can be redone, next first. */
  readonly future: readonly Step[];
  /** Edits that follow each other under one key are one step (a drag, a word being typed). */
  readonly mergeKey: string | null;
};

export function startHistory(harness: Harness): History {
  return { present: harness, past: [], future: [], mergeKey: null };
}

/**
 * Applies an edit as one step.
 * @param mergeKey an edit with the same key as the last one joins its step
 */
export function edit(
  history: History,
  change: Edit,
  mergeKey: string | null = null,
): { readonly ok: true; readonly history: History } | Refused {
  const result = apply(history.present, change);
  if (!result.ok) return result;
  return { ok: true, history: record(history, nameOfEdit(change), result.harness, mergeKey) };
}

/** Takes a harness that was made elsewhere (an arrangement, an import) as one step. */
export function record(
  history: History,
  name: string,
  harness: Harness,
  mergeKey: string | null = null,
): History {
  if (harness === history.present) return history;
  const merges = mergeKey !== null && mergeKey === history.mergeKey && history.past.length > 0;
  return {
    present: harness,
    past: merges ? history.past : [...history.past, { name, harness: history.present }],
    future: [],
    mergeKey,
  };
}

/** Ends the step in progress: the next edit starts its own, whatever its key. */
export function closeStep(history: History): History {
  return history.mergeKey === null ? history : { ...history, mergeKey: null };
}

export function undo(history: History): History {
  const last = history.past[history.past.length - 1];
  if (!last) return history;
  return {
    present: last.harness,
    past: history.past.slice(0, -1),
    future: [{ name: last.name, harness: history.present }, ...history.future],
    mergeKey: null,
  };
}

export function redo(history: History): History {
  const [next, ...rest] = history.future;
  if (!next) return history;
  return {
    present: next.harness,
    past: [...history.past, { name: next.name, harness: history.present }],
    future: rest,
    mergeKey: null,
  };
}

/** "cap spare": what undo would take back; `null` where there is nothing. */
export function undoName(history: History): string | null {
  return history.past[history.past.length - 1]?.name ?? null;
}

export function redoName(history: History): string | null {
  return history.future[0]?.name ?? null;
}
