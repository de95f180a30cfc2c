import { createStore, del, entries, get, set, type UseStore } from "idb-keyval";
import type { OwnRecord } from "./own-model.ts";

let connectors: UseStore | null = null;
const shelf = (): UseStore => {
  connectors ??= createStore("pigtail-connectors", "connector");
  return connectors;
};

/** @throws where the browser refuses storage */
export async function listRecords(): Promise<readonly OwnRecord[]> {
  return (await entries<string, OwnRecord>(shelf())).map(([, record]) => record);
}

/** Puts a connector on the shelf, in place of what stood under its id. */
export async function putRecord(record: OwnRecord): Promise<void> {
  await set(record.id, record, shelf());
}

/** Takes a connector off the shelf; returns it, so that it can be put back. */
export async function takeRecord(id: string): Promise<OwnRecord | undefined> {
  const record = await get<OwnRecord>(id, shelf());
  await del(id, shelf());
  return record;
}
