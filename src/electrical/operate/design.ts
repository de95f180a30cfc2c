import type { ContactKey } from "../../graph/contacts.ts";
import type { Harness, PartId, WireId } from "../../graph/harness.ts";
import type { Traced } from "../../graph/trace.ts";
import type { Ask } from "./circuit-of.ts";
import { designStates } from "./key-state.ts";
import { operate } from "./operate.ts";
import { type LoadPath, pathOf } from "./path.ts";
import type { Readings } from "./readings.ts";

/** What a harness is sized for: every key position, with nothing on and with everything on. */
export type Design = {
  readonly harness: Harness;
  readonly readings: readonly Readings[];
  /** The most that each wire carries, and in which of the readings. */
  readonly wires: ReadonlyMap<WireId, Most>;
  readonly fuses: ReadonlyMap<PartId, Most>;
  /** The way of every load in the state in which it draws most. */
  readonly paths: ReadonlyMap<ContactKey, { readonly path: LoadPath; readonly readings: Readings }>;
};

export type Most = { readonly amps: number; readonly readings: Readings };

/** Operates a harness in every state that it has to bear. */
export function designOf(harness: Harness, traced: Pick<Traced, "wiresAt">, ask: Ask = {}): Design {
  const all: Readings[] = [];
  for (const state of designStates(harness)) {
    all.push(operate(harness, traced, state, { ...ask, before: all.at(-1) ?? null }));
  }
  const wires = new Map<WireId, Most>();
  const fuses = new Map<PartId, Most>();
  const loads = new Map<ContactKey, Most>();
  for (const readings of all) {
    for (const [id, { amps }] of readings.wires) raise(wires, id, Math.abs(amps), readings);
    for (const [id, { amps }] of readings.fuses) raise(fuses, id, amps, readings);
    for (const [key, { amps }] of readings.loads) raise(loads, key, Math.abs(amps), readings);
  }
  const paths = new Map<ContactKey, { path: LoadPath; readings: Readings }>();
  for (const [key, { readings }] of loads) {
    const path = pathOf(readings, key);
    if (path) paths.set(key, { path, readings });
  }
  return { harness, readings: all, wires, fuses, paths };
}

function raise<Key>(found: Map<Key, Most>, key: Key, amps: number, readings: Readings): void {
  const known = found.get(key);
  if (!known || amps > known.amps * (1 + 1e-9)) found.set(key, { amps, readings });
}
