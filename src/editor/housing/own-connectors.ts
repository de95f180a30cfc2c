import { useEffect } from "react";
import { useStore } from "zustand";
import { createStore } from "zustand/vanilla";
import type { KeptConnector } from "../../graph/own-connector/kept-connector.ts";
import { serialiseConnector } from "../../graph/own-connector/parse-connector.ts";
import { freshId } from "../files/last-open.ts";
import { type OwnList, type OwnRecord, readOwn } from "./own-model.ts";
import { listRecords, putRecord, takeRecord } from "./own-shelf.ts";

type OwnState = OwnList & {
  /** Why the browser's storage cannot be used; "" while it can. */
  readonly trouble: string;
  /** What was removed last, until the page goes. */
  readonly removed: OwnRecord | null;
};

/** The person's own connectors in this browser. Another tab's are seen when a dialog opens. */
export const ownConnectors = createStore<OwnState>()(() => ({
  own: [],
  unreadable: [],
  trouble: "",
  removed: null,
}));

export async function refreshOwn(): Promise<void> {
  try {
    ownConnectors.setState({ ...readOwn(await listRecords()), trouble: "" });
  } catch (error) {
    ownConnectors.setState({ trouble: (error as Error).message });
  }
}

/**
 * Keeps a connector, as a new one or in place of one.
 * @returns its id, or `null` where the browser refused; `trouble` then says why
 */
export async function putOwn(
  connector: KeptConnector,
  replaces: string | null = null,
): Promise<string | null> {
  const id = replaces ?? freshId();
  try {
    await putRecord({ id, text: serialiseConnector(connector), keptAt: Date.now() });
  } catch (error) {
    ownConnectors.setState({ trouble: (error as Error).message });
    return null;
  }
  await refreshOwn();
  return id;
}

export async function removeOwn(id: string): Promise<void> {
  try {
    const record = await takeRecord(id);
    if (record) ownConnectors.setState({ removed: record });
  } catch (error) {
    ownConnectors.setState({ trouble: (error as Error).message });
    return;
  }
  await refreshOwn();
}

/** Puts back what was removed last. Returns its id. */
export async function putBackOwn(): Promise<string | null> {
  const { removed } = ownConnectors.getState();
  if (!removed) return null;
  try {
    await putRecord(removed);
  } catch (error) {
    ownConnectors.setState({ trouble: (error as Error).message });
    return null;
  }
  ownConnectors.setState({ removed: null });
  await refreshOwn();
  return removed.id;
}

/** What is kept, read afresh when the component appears. */
export function useOwn(): OwnState {
  useEffect(() => void refreshOwn(), []);
  return useStore(ownConnectors);
}
