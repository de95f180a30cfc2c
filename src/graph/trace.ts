import { type Contact, type ContactKey, contactKey, contactsOf, refOfKey } from "./contacts.ts";
import type { Harness, Part, Wire, WireId } from "./harness.ts";

/** All contacts that copper alone joins: wires, joints and mated contacts, never through a fuse or a coil. */
export type Circuit = {
  /** Its position in `Traced.circuits`. */
  readonly id: number;
  readonly contacts: readonly ContactKey[];
  readonly wires: readonly WireId[];
  /** Wires of this circuit that have a loose end. */
  readonly loose: readonly WireId[];
};

export type Traced = {
  readonly circuits: readonly Circuit[];
  /** Every contact of every part has a circuit, if only its own. */
  circuitOf(contact: ContactKey): Circuit | undefined;
  circuitOfWire(wire: WireId): Circuit | undefined;
  /** Wires that land on a contact, in document order. */
  wiresAt(contact: ContactKey): readonly Wire[];
  partOf(contact: ContactKey): Part | undefined;
  contact(key: ContactKey): Contact | undefined;
};

const NO_WIRES: readonly Wire[] = [];

/** The top representative of an element, halving paths on the way. */
function find(parent: Int32Array, start: number): number {
  let at = start;
  while (parent[at] !== at) {
    parent[at] = parent[parent[at]!]!;
    at = parent[at]!;
  }
  return at;
}

function union(parent: Int32Array, a: number, b: number): void {
  const top = find(parent, a);
  const other = find(parent, b);
  if (top < other) parent[other] = top;
  else parent[top] = other;
}

/**
 * Finds the circuits of a harness. Time and memory grow in step with contacts plus wires.
 * A wire with two loose ends is a circuit of its own, without contacts.
 */
export function trace(harness: Pick<Harness, "parts" | "wires">): Traced {
  const parts = Object.values(harness.parts);
  const wires = Object.values(harness.wires);
  const keys: ContactKey[] = [];
  const indexOf = new Map<ContactKey, number>();
  const firstOf = new Map<string, number>();
  for (const part of parts) {
    firstOf.set(part.id, keys.length);
    for (const contact of contactsOf(part)) {
      const key = contactKey(part.id, contact.number);
      indexOf.set(key, keys.length);
      keys.push(key);
    }
  }
  const contactCount = keys.length;
  const parent = new Int32Array(contactCount + wires.length);
  for (let i = 0; i < parent.length; i++) parent[i] = i;
  const wiresAt = new Map<ContactKey, Wire[]>();

  for (const part of parts) {
    const first = firstOf.get(part.id)!;
    if (part.kind === "splice") union(parent, first, first + 1);
    if (part.kind === "connector" && part.matedWith) {
      const other = harness.parts[part.matedWith];
      const otherFirst = firstOf.get(part.matedWith);
      if (!other || otherFirst === undefined) continue;
      const shared = Math.min(contactsOf(part).length, contactsOf(other).length);
      for (let i = 0; i < shared; i++) union(parent, first + i, otherFirst + i);
    }
  }
  wires.forEach((wire, wireIndex) => {
    for (const end of wire.ends) {
      if (end === "loose") continue;
      const key = contactKey(end.part, end.contact);
      const index = indexOf.get(key);
      if (index === undefined) continue;
      union(parent, index, contactCount + wireIndex);
      const list = wiresAt.get(key);
      if (!list) wiresAt.set(key, [wire]);
      else if (list[list.length - 1] !== wire) list.push(wire);
    }
  });

  type Growing = { id: number; contacts: ContactKey[]; wires: WireId[]; loose: WireId[] };
  const byRoot = new Map<number, Growing>();
  const grow = (element: number): Growing => {
    const root = find(parent, element);
    let circuit = byRoot.get(root);
    if (!circuit) {
      circuit = { id: byRoot.size, contacts: [], wires: [], loose: [] };
      byRoot.set(root, circuit);
    }
    return circuit;
  };
  for (let i = 0; i < contactCount; i++) grow(i).contacts.push(keys[i]!);
  wires.forEach((wire, wireIndex) => {
    const circuit = grow(contactCount + wireIndex);
    circuit.wires.push(wire.id);
    if (wire.ends[0] === "loose" || wire.ends[1] === "loose") circuit.loose.push(wire.id);
  });
  const wireIndexOf = new Map(wires.map((wire, index) => [wire.id, contactCount + index]));

  return {
    circuits: [...byRoot.values()],
    circuitOf: (key) => {
      const index = indexOf.get(key);
      return index === undefined ? undefined : byRoot.get(find(parent, index));
    },
    circuitOfWire: (id) => {
      const index = wireIndexOf.get(id);
      return index === undefined ? undefined : byRoot.get(find(parent, index));
    },
    wiresAt: (key) => wiresAt.get(key) ?? NO_WIRES,
    partOf: (key) => harness.parts[refOfKey(key).part],
    contact: (key) => {
      const { part, contact } = refOfKey(key);
      const owner = harness.parts[part];
      return owner ? contactsOf(owner)[contact - 1] : undefined;
    },
  };
}
