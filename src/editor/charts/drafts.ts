import { createStore, del, get, set, type UseStore } from "idb-keyval";
import type { Desk } from "./desk-model.ts";

/** A review that was closed half-way, as it stood. */
export type Draft = { readonly keptAt: number; readonly desk: Desk };

let store: UseStore | null = null;
const drafts = (): UseStore => {
  store ??= createStore("pigtail-chart-reviews", "review");
  return store;
};

/** A sheet with nothing on it is a new one each time the page is opened: its review is kept under this. */
const EMPTY_SHEET = "empty-sheet";

/** Keeps a review beside its harness. @throws where the browser refuses storage */
export async function keepDraft(harnessId: string, isEmpty: boolean, desk: Desk): Promise<void> {
  const draft: Draft = { keptAt: Date.now(), desk };
  await set(harnessId, draft, drafts());
  if (isEmpty) await set(EMPTY_SHEET, draft, drafts());
}

export async function takeDraft(harnessId: string, isEmpty: boolean): Promise<Draft | null> {
  const own = await get<Draft>(harnessId, drafts());
  if (own) return own;
  return (isEmpty ? await get<Draft>(EMPTY_SHEET, drafts()) : undefined) ?? null;
}

/** Forgets a review: it was accepted, or set aside for good. */
export async function dropDraft(harnessId: string): Promise<void> {
  const own = await get<Draft>(harnessId, drafts());
  const shared = await get<Draft>(EMPTY_SHEET, drafts());
  await del(harnessId, drafts());
  // The empty sheet's is another one where it was begun later, elsewhere.
  if (shared && (!own || shared.keptAt <= own.keptAt)) await del(EMPTY_SHEET, drafts());
}
