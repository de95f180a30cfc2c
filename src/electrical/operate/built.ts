import type { ContactKey } from "../../graph/contacts.ts";
import type { PartId, WireId } from "../../graph/harness.ts";
import type { Circuit, CircuitElement } from "../solve/circuit.ts";
import type { Assumption } from "./assumed.ts";
import type { Setting } from "./builder.ts";

/** What an element of the circuit stands for. */
export type Role =
  | "wire"
  | "mate"
  | "joint"
  | "fuse"
  | "switch"
  | "diode"
  | "suppression"
  | "coil"
  | "make"
  | "rest"
  | "resistor"
  | "load"
  | "speaker"
  | "battery"
  /** A ground stud, or the vehicle's ground behind a cavity. */
  | "ground"
  /** A cavity that gives volts: the vehicle's, or a box's output. */
  | "feed"
  | "output"
  /** A cavity that pulls its lead to ground. */
  | "sink"
  /** A cavity that draws. */
  | "take"
  /** What joins the ground contacts of one box inside it. */
  | "tie";

/** Whose each element is, as columns: a large harness has ten thousands of them. */
export type Owners = {
  readonly role: readonly Role[];
  /** The wire of a wire's element, else the part. */
  readonly id: readonly (PartId | WireId)[];
  /** The contact it stands behind or begins at, where it is one contact's; else 0. */
  readonly contact: readonly number[];
};

/**
 * An element that is one thing or another, which only the voltages decide: what a box draws asleep and awake, a load
 * that is wired the wrong way round.
 */
export type Choice = {
  readonly element: number;
  readonly on: CircuitElement;
  readonly off: CircuitElement;
  /** Its place in `boxes`; −1: a load that blocks current against it. */
  readonly box: number;
};

/** A box that sleeps and wakes. */
export type Box = {
  /** A module's id, or "equipment" for the unit that connectors without a module are of. */
  readonly key: string;
  readonly parts: readonly PartId[];
  readonly wakeNodes: readonly number[];
  readonly returnNode: number;
  /** Awake whatever the voltages: by key, or since nothing puts it to sleep. `null`: its leads decide. */
  readonly fixed: boolean | null;
};

/** What gives: for the table of sources. */
export type Giver = {
  readonly element: number;
  readonly key: ContactKey;
  readonly limit_A: number | null;
  /** What stands behind the limit: a fuse that opens, or an output that gives no more. */
  readonly limitedBy: "fuse" | "output" | "none" | "unknown";
};

/** What takes: load parts and cavities that draw. */
export type Taker = {
  readonly element: number;
  readonly key: ContactKey;
  readonly plus: number;
  readonly minus: number;
  readonly part: PartId;
  /** What it is made to draw; `null` where not stated. */
  readonly stated_A: number | null;
  readonly nominal_V: number;
  readonly polarised: boolean;
};

/** A circuit made of a harness, with the way back from every element. */
export type Built = {
  readonly setting: Setting;
  readonly circuit: Circuit;
  readonly owners: Owners;
  readonly choices: readonly Choice[];
  readonly boxes: readonly Box[];
  readonly givers: readonly Giver[];
  readonly takers: readonly Taker[];
  /** The first node of each part's contacts; contact n is node first + n − 1. Node 0 is the frame. */
  readonly firstNode: ReadonlyMap<PartId, number>;
  /** [nodes] the contact that a node is; the frame has none. */
  readonly keyOf: readonly (ContactKey | null)[];
  /** What each wire was reckoned with, in the document's order. */
  readonly wires: ReadonlyMap<WireId, WireFacts>;
  readonly nominal_V: number;
  /** At the battery's posts in this state. */
  readonly battery_V: number;
  readonly assumptions: readonly Assumption[];
};

export type WireFacts = {
  readonly area_mm2: number;
  readonly length_m: number;
  readonly temperature_degC: number;
  readonly material: "copper" | "tinned-copper" | "cca-15" | "cca-10";
  readonly limit_degC: number;
  readonly engineSpace: boolean;
  readonly resistance_ohm: number;
  /** Its place among the elements; −1 for a wire with a loose end, which is none. */
  readonly element: number;
  /** What a book of ampacity asks of it, as one text. */
  readonly kind: string;
};

export const FRAME = 0;

/** The part that an element belongs to; `null` for a wire's. */
export function partOfElement(owners: Owners, element: number): PartId | null {
  const role = owners.role[element];
  return role === undefined || role === "wire" ? null : (owners.id[element] as PartId);
}

/** The wire that an element is; `null` for a part's. */
export function wireOfElement(owners: Owners, element: number): WireId | null {
  return owners.role[element] === "wire" ? (owners.id[element] as WireId) : null;
}

/** The node of a contact; `null` where the part has none of that number. */
export function nodeOf(
  built: Pick<Built, "firstNode" | "keyOf">,
  part: PartId,
  contact: number,
): number | null {
  const first = built.firstNode.get(part);
  if (first === undefined) return null;
  const node = first + contact - 1;
  const key = built.keyOf[node];
  return key === `${part}#${contact}` ? node : null;
}
