import { functionOf, type WireFunction } from "../catalogue/functions.ts";
import { type Contact, type ContactKey, contactsOf, keysOf } from "../graph/contacts.ts";
import type {
  Connector,
  ContactRef,
  Direction,
  Harness,
  JobSide,
  Part,
  PartId,
  Wire,
} from "../graph/harness.ts";
import type { Circuit, Traced } from "../graph/trace.ts";
import { directionOf } from "./direction.ts";

/** One contact with all that a reader of functions wants to know of it. */
export type Point = {
  readonly key: ContactKey;
  readonly at: ContactRef;
  readonly part: Part;
  readonly contact: Contact;
  readonly means: WireFunction;
  /** As stated, or as its function and side make plain. */
  readonly direction: Direction;
  /** The box it belongs to: a module's id, or "vehicle"/"equipment"; its own part for a load or speaker. */
  readonly unit: string | null;
  readonly side: JobSide | null;
  /** Where wires to it may land: its own contact, and the one it is mated with. */
  readonly landings: readonly ContactKey[];
};

/** A circuit seen by what it joins: joints and caps are told apart from what has a purpose. */
export type PointCircuit = {
  readonly circuit: Circuit;
  readonly points: readonly Point[];
  readonly caps: readonly PartId[];
};

export type Points = {
  readonly all: readonly Point[];
  readonly circuits: readonly PointCircuit[];
  readonly byFunction: ReadonlyMap<string, readonly Point[]>;
  readonly byUnit: ReadonlyMap<string, readonly Point[]>;
  /** The points of other boxes that stand for contacts of a box, which is mated with them. */
  readonly standIns: ReadonlyMap<string, readonly Point[]>;
  /** The point that stands for a contact; a joint's or a cap's has none. */
  pointAt(part: PartId, contact: number): Point | undefined;
  circuitAt(part: PartId, contact: number): PointCircuit;
  circuitOf(point: Point): PointCircuit;
  /** The other contacts of its circuit that have a purpose. */
  partners(point: Point): readonly Point[];
  /** Wires that land on it or on the contact it is mated with. */
  wiresAt(point: Point): readonly Wire[];
};

type Still = Omit<Point, "landings"> & { readonly landings: readonly [ContactKey] };
const remembered = new WeakMap<Part, readonly Still[]>();

/** The points of a part, but for what it is mated with: they change only when the part does. */
function stillPoints(part: Part): readonly Still[] {
  const known = remembered.get(part);
  if (known) return known;
  const owner = ownerOf(part);
  const keys = keysOf(part);
  const made = contactsOf(part).map((contact, index): Still => {
    const key = keys[index]!;
    return {
      key,
      at: { part: part.id, contact: contact.number },
      part,
      contact,
      means: functionOf(contact.function),
      direction: directionOf(part, contact),
      ...owner,
      landings: [key],
    };
  });
  remembered.set(part, made);
  return made;
}

function ownerOf(part: Part): { unit: string | null; side: JobSide | null } {
  if (part.kind === "connector")
    return { unit: part.belongsTo.module ?? part.belongsTo.side, side: part.belongsTo.side };
  if (part.kind === "module") return { unit: part.id, side: part.side };
  return { unit: part.kind === "load" || part.kind === "speaker" ? part.id : null, side: null };
}

/**
 * Every contact of a harness as a point, grouped by circuit, by function and by the box it belongs to.
 * Of two mated contacts that mean the same, one stands for both. Linear in the size of the harness.
 */
export function pointsOf(harness: Pick<Harness, "parts">, traced: Traced): Points {
  const all: Point[] = [];
  const byFunction = new Map<string, Point[]>();
  const byUnit = new Map<string, Point[]>();
  const standIns = new Map<string, Point[]>();
  const standing = new Map<PartId, (Point | undefined)[]>();
  const noCaps: PartId[] = [];
  const circuits = traced.circuits.map((circuit) => ({ circuit, points: [] as Point[], caps: noCaps }));
  const circuitAt = (part: PartId, contact: number) => circuits[traced.circuitAt(part, contact)!.id]!;
  const mates = matesOf(harness);

  for (const part of Object.values(harness.parts)) {
    if (part.kind === "splice") continue;
    if (part.kind === "cap") {
      const circuit = circuitAt(part.id, 1);
      circuit.caps = [...circuit.caps, part.id];
      continue;
    }
    const mate = mates.get(part.id);
    const shown: (Point | undefined)[] = [];
    standing.set(part.id, shown);
    for (const still of stillPoints(part)) {
      let point: Point = still;
      const other = mate && stillPoints(mate)[still.contact.number - 1];
      if (other) {
        if (isShadow(still, other)) {
          shown.push(undefined);
          continue;
        }
        point = { ...still, landings: [still.key, other.key] };
        if (other.unit !== null && other.unit !== still.unit && isShadow(other, still))
          push(standIns, other.unit, point);
      }
      circuitAt(part.id, still.contact.number).points.push(point);
      shown.push(point);
      all.push(point);
      push(byFunction, point.means.id, point);
      if (point.unit !== null) push(byUnit, point.unit, point);
    }
  }
  const circuitOf = (point: Point) => circuitAt(point.part.id, point.contact.number);
  return {
    all,
    circuits,
    byFunction,
    byUnit,
    standIns,
    pointAt: (part, contact) => {
      const mate = mates.get(part);
      return standing.get(part)?.[contact - 1] ?? (mate && standing.get(mate.id)?.[contact - 1]);
    },
    circuitAt,
    circuitOf,
    partners: (point) => circuitOf(point).points.filter((other) => other !== point),
    wiresAt: (point) => {
      const [own, mated] = point.landings;
      const wires = traced.wiresAt(own!);
      return mated === undefined ? wires : [...wires, ...traced.wiresAt(mated)];
    },
  };
}

function push(map: Map<string, Point[]>, name: string, point: Point): void {
  const list = map.get(name);
  if (list) list.push(point);
  else map.set(name, [point]);
}

/** Connectors that are mated, whichever of the two says so; one that two others claim goes with the first by name. */
function matesOf(harness: Pick<Harness, "parts">): ReadonlyMap<PartId, Connector> {
  const mates = new Map<PartId, Connector>();
  const claims: Connector[] = [];
  for (const part of Object.values(harness.parts))
    if (part.kind === "connector" && part.matedWith) claims.push(part);
  claims.sort((a, b) => (a.designation < b.designation ? -1 : 1));
  for (const part of claims) {
    if (!part.matedWith || mates.has(part.id)) continue;
    const other = harness.parts[part.matedWith];
    if (other?.kind !== "connector" || other === part || mates.has(other.id)) continue;
    mates.set(part.id, other);
    mates.set(other.id, part);
  }
  return mates;
}

/** Of two mated contacts, the one that adds nothing: the other says the same, or says more. */
function isShadow(own: Still, other: Still): boolean {
  if (own.means.id !== other.means.id) return own.means.id === "unknown";
  const difference = weight(own) - weight(other);
  // Designations settle a tie, so that the answer does not hang on ids or on the order of the parts.
  if (difference !== 0) return difference < 0;
  return own.part.designation === other.part.designation
    ? own.part.id > other.part.id
    : own.part.designation > other.part.designation;
}

function weight(point: Still): number {
  const says = point.direction === "gives" || point.direction === "takes" || point.direction === "both";
  return (says ? 4 : 0) + (point.contact.cavity?.lead ? 2 : 0) + (point.side === "vehicle" ? 1 : 0);
}
