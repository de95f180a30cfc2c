import { type ContactKey, contactKey, contactsOf, keyOfEnd, refOfKey } from "../../graph/contacts.ts";
import type { Harness, Part, PartId, Wire } from "../../graph/harness.ts";
import type { Context } from "../context.ts";

/** How a contact is reached along leads. */
export type Reached = {
  readonly key: ContactKey;
  /** Of the wires on the way, metres; those whose length nobody has stated count nothing. */
  readonly length_m: number;
  /** Whether every wire on the way has a stated length. */
  readonly isKnown: boolean;
  readonly wire: Wire | null;
  readonly before: Reached | null;
};

/**
 * Walks from contacts along wires, through joints and mated contacts, and through the parts that `passes` allows:
 * the shortest way to every contact that is met.
 */
export function walkLeads(
  context: Context,
  starts: readonly ContactKey[],
  passes: (part: Part) => boolean = () => false,
): ReadonlyMap<ContactKey, Reached> {
  const mates = matesOf(context.harness);
  const found = new Map<ContactKey, Reached>();
  const queue: Reached[] = [];
  const reach = (one: Reached) => {
    const known = found.get(one.key);
    if (known && known.length_m <= one.length_m) return;
    found.set(one.key, one);
    queue.push(one);
  };
  for (const key of starts) reach({ key, length_m: 0, isKnown: true, wire: null, before: null });
  for (let next = 0; next < queue.length; next++) {
    const here = queue[next]!;
    if (found.get(here.key) !== here) continue;
    const beyond = (key: ContactKey) => reach({ ...here, key, wire: null, before: here });
    const { part: id, contact } = refOfKey(here.key);
    const part = context.harness.parts[id];
    const mate = mates.get(id);
    if (mate && contact <= contactsOf(mate).length) beyond(contactKey(mate.id, contact));
    if (part && (part.kind === "splice" || passes(part)))
      for (const other of throughPart(part, contact)) beyond(contactKey(id, other));
    for (const wire of context.traced.wiresAt(here.key)) {
      const length = lengthOf(context.harness, wire);
      for (const end of wire.ends) {
        const key = keyOfEnd(end);
        if (key === null || key === here.key) continue;
        const length_m = here.length_m + (length ?? 0);
        reach({ key, length_m, isKnown: here.isKnown && length !== null, wire, before: here });
      }
    }
  }
  return found;
}

/** The wires of a way, from its start on. */
export function wiresOf(reached: Reached): readonly Wire[] {
  const wires: Wire[] = [];
  for (let at: Reached | null = reached; at; at = at.before) if (at.wire) wires.unshift(at.wire);
  return wires;
}

/** A wire's stated length, else that of its runs; `null` where neither is stated. */
export function lengthOf({ runs }: Pick<Harness, "runs">, wire: Wire): number | null {
  if (wire.length_m !== "unknown") return wire.length_m;
  if (!wire.runs.length) return null;
  let sum_m = 0;
  for (const id of wire.runs) {
    const length_m = runs[id]?.length_m ?? "unknown";
    if (length_m === "unknown") return null;
    sum_m += length_m;
  }
  return sum_m;
}

/** Contacts that current may leave by, having come in by one. */
function throughPart(part: Part, contact: number): readonly number[] {
  if (part.kind === "relay") {
    const made = part.poles === "make" ? [4] : [4, 5];
    return contact === 1 ? made : contact >= 4 ? [1] : [];
  }
  return contactsOf(part).length === 2 ? [3 - contact] : [];
}

const remembered = new WeakMap<Harness["parts"], ReadonlyMap<PartId, Part>>();

/** What each connector is plugged into, whichever of the two says so. */
function matesOf({ parts }: Harness): ReadonlyMap<PartId, Part> {
  const known = remembered.get(parts);
  if (known) return known;
  const mates = new Map<PartId, Part>();
  for (const part of Object.values(parts)) {
    const other = part.kind === "connector" && part.matedWith ? parts[part.matedWith] : undefined;
    if (other?.kind !== "connector" || other === part) continue;
    if (!mates.has(part.id)) mates.set(part.id, other);
    if (!mates.has(other.id)) mates.set(other.id, part);
  }
  remembered.set(parts, mates);
  return mates;
}
