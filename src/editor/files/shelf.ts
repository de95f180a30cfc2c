import { createStore, del, entries, get, set, type UseStore, update } from "idb-keyval";
import { type Kept, mayWrite, type Recent, sortRecent } from "./files-model.ts";

let harnesses: UseStore | null = null;
let recents: UseStore | null = null;
const shelf = (): UseStore => {
  harnesses ??= createStore("pigtail-harnesses", "harness");
  return harnesses;
};
const list = (): UseStore => {
  recents ??= createStore("pigtail-recent", "recent");
  return recents;
};

export type Written =
  | { readonly ok: true; readonly revision: number }
  | { readonly ok: false; readonly theirs: Kept };

/**
 * Keeps a harness if no other tab has written it since `seenRevision`. Reading and writing are one IndexedDB
 * transaction, so two tabs cannot both pass the test.
 * @param force write whatever stands there (the person has chosen to take over)
 * @throws where the browser refuses storage (full, or blocked)
 */
export async function keep(
  record: Omit<Kept, "revision">,
  seenRevision: number,
  force = false,
): Promise<Written> {
  let result: Written | null = null;
  await update<Kept>(
    record.id,
    (existing) => {
      if (existing && !force && !mayWrite(existing, seenRevision)) {
        result = { ok: false, theirs: existing };
        return existing;
      }
      const revision = Math.max(existing?.revision ?? 0, seenRevision) + 1;
      result = { ok: true, revision };
      return { ...record, revision };
    },
    shelf(),
  );
  if (!result) throw new Error("the browser did not carry out the write");
  return result;
}

export const takeDown = (id: string): Promise<Kept | undefined> => get<Kept>(id, shelf());

export async function putRecent(recent: Recent): Promise<void> {
  await set(recent.id, recent, list());
}

export async function listRecent(): Promise<readonly Recent[]> {
  return sortRecent((await entries<string, Recent>(list())).map(([, recent]) => recent));
}

/** Removes a harness from the browser; returns what was removed, so that it can be put back. */
export async function remove(id: string): Promise<Kept | undefined> {
  const record = await takeDown(id);
  await del(id, shelf());
  await del(id, list());
  return record;
}

/** Puts back what `remove` took away, as it was. */
export async function putBack(record: Kept, recent: Recent): Promise<void> {
  await set(record.id, record, shelf());
  await set(recent.id, recent, list());
}
