import { createStore, del, get, set, type UseStore } from "idb-keyval";
import { SIDES, type SideName } from "../../match/review/review.ts";
import type { Desk } from "./desk-model.ts";

/** A review that was closed half-way, as it stood. */
export type Draft = { readonly keptAt: number; readonly desk: Desk };

let store: UseStore | null = null;
const drafts = (): UseStore => {
  store ??= createStore("pigtail-chart-reviews", "review");
  return store;
};

/** A sheet with nothing on it is a new one each time the page is opened: under this stands whose review it has. */
const EMPTY_SHEET = "empty-sheet";

const textKey = (id: string, side: SideName) => `${id} ${side} text`;
/** Texts as they are kept by now: a long one is not written again with every decision. */
const kept = new Map<string, string>();

/** A review that is asked for while it is still being written is the one that is being written. */
let writing: Promise<void> = Promise.resolve();

/** Keeps a review beside its harness. @throws where the browser refuses storage */
export function keepDraft(harnessId: string, isEmpty: boolean, desk: Desk): Promise<void> {
  const written = writing.then(() => writeDraft(harnessId, isEmpty, desk));
  writing = written.catch(() => undefined);
  return written;
}

async function writeDraft(harnessId: string, isEmpty: boolean, desk: Desk): Promise<void> {
  const { left, right } = desk.sides;
  for (const side of SIDES) {
    const key = textKey(harnessId, side);
    const { text } = desk.sides[side];
    if (kept.get(key) === text) continue;
    await set(key, text, drafts());
    kept.set(key, text);
  }
  const short: Desk = { ...desk, sides: { left: { ...left, text: "" }, right: { ...right, text: "" } } };
  await set(harnessId, { keptAt: Date.now(), desk: short } satisfies Draft, drafts());
  if (isEmpty) await set(EMPTY_SHEET, harnessId, drafts());
}

export async function takeDraft(harnessId: string, isEmpty: boolean): Promise<Draft | null> {
  await writing;
  const own = await readDraft(harnessId);
  if (own || !isEmpty) return own;
  const other = await get<string>(EMPTY_SHEET, drafts());
  return typeof other === "string" ? readDraft(other) : null;
}

async function readDraft(id: string): Promise<Draft | null> {
  const draft = await get<Draft>(id, drafts());
  if (!draft) return null;
  const text = async (side: SideName) => (await get<string>(textKey(id, side), drafts())) ?? "";
  const { left, right } = draft.desk.sides;
  const sides = {
    left: { ...left, text: await text("left") },
    right: { ...right, text: await text("right") },
  };
  return { ...draft, desk: { ...draft.desk, sides } };
}

/** Forgets a review: it was accepted. */
export async function dropDraft(harnessId: string): Promise<void> {
  await writing;
  const shared = await get<string>(EMPTY_SHEET, drafts());
  const ids = new Set([harnessId]);
  // It was begun on an empty sheet, and taken up on another one.
  if (typeof shared === "string") {
    const own = await get<Draft>(harnessId, drafts());
    const first = shared === harnessId ? null : await get<Draft>(shared, drafts());
    if (!first || (own && first.keptAt <= own.keptAt)) {
      await del(EMPTY_SHEET, drafts());
      ids.add(shared);
    }
  }
  for (const id of ids) {
    await del(id, drafts());
    for (const side of SIDES) {
      await del(textKey(id, side), drafts());
      kept.delete(textKey(id, side));
    }
  }
}
