import { isGround } from "../../catalogue/functions.ts";
import type { PointCircuit } from "../../electrical/points.ts";
import { type ContactKey, contactKey, keyOfEnd, refOfKey } from "../../graph/contacts.ts";
import type { Cable, Wire, WireId } from "../../graph/harness.ts";
import type { Context } from "../context.ts";
import { compareNames } from "../words.ts";

/** A cable by its wires: the cores, and the one that stands for the shield. */
export type Cores = { readonly cable: Cable; readonly cores: readonly Wire[]; readonly shield: Wire | null };

/** The cables of a harness in the order of their designations; wires that are gone are left out. */
export function cablesOf(context: Context): readonly Cores[] {
  const { cables, wires } = context.harness;
  return Object.values(cables)
    .map((cable): Cores => {
      const shield = cable.shield === null ? null : (wires[cable.shield] ?? null);
      const cores = cable.wires.flatMap((id) => (id === cable.shield ? [] : (wires[id] ?? [])));
      return { cable, cores, shield };
    })
    .sort(
      (a, b) => compareNames(a.cable.designation, b.cable.designation) || (a.cable.id < b.cable.id ? -1 : 1),
    );
}

/** The circuit that a wire is of; none for one with both ends loose. */
export function circuitOfWire(context: Context, wire: Wire): PointCircuit | null {
  for (const end of wire.ends)
    if (end !== "loose" && context.harness.parts[end.part])
      return context.points.circuitAt(end.part, end.contact);
  return null;
}

/** What is joined to a contact by copper, itself first, without the help of some wires. */
export function copperFrom(
  context: Context,
  start: ContactKey,
  without: ReadonlySet<WireId>,
): readonly ContactKey[] {
  const found = [start];
  const seen = new Set(found);
  const visit = (key: ContactKey | null): void => {
    if (key === null || seen.has(key)) return;
    seen.add(key);
    found.push(key);
  };
  for (let next = 0; next < found.length; next++) {
    const key = found[next]!;
    const { part: id, contact } = refOfKey(key);
    const part = context.harness.parts[id];
    if (!part) continue;
    if (part.kind === "splice") visit(contactKey(id, 3 - contact));
    if (part.kind === "connector")
      for (const mate of context.points.pointAt(id, contact)?.landings ?? []) visit(mate);
    for (const wire of context.traced.wiresAt(key)) {
      if (without.has(wire.id)) continue;
      for (const end of wire.ends) visit(keyOfEnd(end));
    }
  }
  return found;
}

/** A contact of a ground, or of a box that joins it to its ground inside. */
export function isGroundContact(context: Context, key: ContactKey): boolean {
  const contact = context.traced.contact(key);
  if (!contact || !isGround(contact.function)) return false;
  const { part, contact: number } = refOfKey(key);
  const point = context.points.pointAt(part, number);
  const box = point ? context.moduleOf(point) : null;
  return box?.signalGround !== "isolated" || !FOR_SIGNALS.has(contact.function);
}

const FOR_SIGNALS = new Set([
  "sense-ground",
  "audio-ground",
  "shield-drain",
  "microphone-shield",
  "aux-ground",
]);
