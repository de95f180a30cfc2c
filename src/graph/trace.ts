import { type Contact, type ContactKey, contactsOf, keysOf, refOfKey } from "./contacts.ts";
import type { Harness, Part, PartId, Wire, WireId } from "./harness.ts";

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
  /** The same as `circuitOf`, for who has no key at hand. */
  circuitAt(part: PartId, contact: number): Circuit | undefined;
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
  // Contacts are counted through, part by part: numbers are compared sooner than keys.
  const spans = new Map<PartId, { readonly first: number; readonly count: number }>();
  let contactCount = 0;
  for (const part of parts) {
    const { length: count } = contactsOf(part);
    spans.set(part.id, { first: contactCount, count });
    contactCount += count;
  }
  const indexAt = (part: PartId, contact: number): number => {
    const span = spans.get(part);
    return span && contact >= 1 && contact <= span.count ? span.first + contact - 1 : -1;
  };
  const indexOfKey = (key: ContactKey): number => {
    const { part, contact } = refOfKey(key);
    return Number.isInteger(contact) ? indexAt(part, contact) : -1;
  };
  const parent = new Int32Array(contactCount + wires.length);
  for (let i = 0; i < parent.length; i++) parent[i] = i;
  const landings: (Wire[] | undefined)[] = new Array(contactCount);

  for (const part of parts) {
    const { first } = spans.get(part.id)!;
    if (part.kind === "splice") union(parent, first, first + 1);
    if (part.kind === "connector" && part.matedWith) {
      const other = spans.get(part.matedWith);
      if (!other) continue;
      const shared = Math.min(contactsOf(part).length, other.count);
      for (let i = 0; i < shared; i++) union(parent, first + i, other.first + i);
    }
  }
  for (let wireIndex = 0; wireIndex < wires.length; wireIndex++) {
    const wire = wires[wireIndex]!;
    for (const end of wire.ends) {
      if (end === "loose") continue;
      const index = indexAt(end.part, end.contact);
      if (index < 0) continue;
      union(parent, index, contactCount + wireIndex);
      const list = landings[index];
      if (!list) landings[index] = [wire];
      else if (list[list.length - 1] !== wire) list.push(wire);
    }
  }

  // Most contacts stand alone and most wires have both ends: an array is made when it gets its first entry.
  type Growing = { id: number; contacts: ContactKey[]; wires: WireId[]; loose: WireId[] };
  const none: WireId[] = [];
  const circuits: Growing[] = [];
  /** The circuit of each root, by one more than its id; 0 where the root has none yet. */
  const madeAt = new Int32Array(parent.length);
  const grow = (element: number): Growing => {
    const root = find(parent, element);
    if (!madeAt[root])
      madeAt[root] = circuits.push({ id: circuits.length, contacts: [], wires: none, loose: none });
    return circuits[madeAt[root]! - 1]!;
  };
  for (const part of parts) {
    const { first } = spans.get(part.id)!;
    const keys = keysOf(part);
    for (let i = 0; i < keys.length; i++) grow(first + i).contacts.push(keys[i]!);
  }
  for (let wireIndex = 0; wireIndex < wires.length; wireIndex++) {
    const wire = wires[wireIndex]!;
    const circuit = grow(contactCount + wireIndex);
    if (circuit.wires === none) circuit.wires = [wire.id];
    else circuit.wires.push(wire.id);
    if (wire.ends[0] !== "loose" && wire.ends[1] !== "loose") continue;
    if (circuit.loose === none) circuit.loose = [wire.id];
    else circuit.loose.push(wire.id);
  }
  const circuitOfElement = (element: number): Circuit => circuits[madeAt[find(parent, element)]! - 1]!;
  let wireIndexOf: Map<WireId, number> | null = null;

  return {
    circuits,
    circuitOf: (key) => {
      const index = indexOfKey(key);
      return index < 0 ? undefined : circuitOfElement(index);
    },
    circuitAt: (part, contact) => {
      const index = indexAt(part, contact);
      return index < 0 ? undefined : circuitOfElement(index);
    },
    circuitOfWire: (id) => {
      wireIndexOf ??= new Map(wires.map((wire, index) => [wire.id, index]));
      const index = wireIndexOf.get(id);
      return index === undefined ? undefined : circuitOfElement(contactCount + index);
    },
    wiresAt: (key) => landings[indexOfKey(key)] ?? NO_WIRES,
    partOf: (key) => harness.parts[refOfKey(key).part],
    contact: (key) => {
      const { part, contact } = refOfKey(key);
      const owner = harness.parts[part];
      return owner ? contactsOf(owner)[contact - 1] : undefined;
    },
  };
}
