import { type ContactKey, keysOf } from "../../graph/contacts.ts";
import type { Harness, Part, PartId, WireId } from "../../graph/harness.ts";
import type { CircuitElement } from "../solve/circuit.ts";
import { Assumed, type Usual } from "./assumed.ts";
import { type Box, type Choice, FRAME, type Giver, type Role, type Taker } from "./built.ts";
import type { KeyState } from "./key-state.ts";

/** The sections of the document that a circuit is built from. */
export type Circuitry = Pick<Harness, "parts" | "wires" | "runs" | "settings">;

/** What a circuit is built from. */
export type Setting = {
  readonly harness: Circuitry;
  readonly state: KeyState;
  readonly usual: Usual;
  readonly nominal_V: number;
  /** At the posts of a battery of the system. */
  readonly battery_V: number;
  /** Said by the state, the settings or who asks; else a battery at rest has what is written on it. */
  readonly batteryIsSet: boolean;
  readonly ambient_degC: number;
  /** Lamps at the instant of switching on. */
  readonly coldLamps: boolean;
  /** Wires, fuses and other parts that are taken as broken: no current passes them. */
  readonly broken: ReadonlySet<string>;
};

/** Where the contacts of some parts stand among the nodes; node 0 is the frame. */
export type Nodes = {
  readonly firstNode: ReadonlyMap<PartId, number>;
  readonly contactCount: ReadonlyMap<PartId, number>;
  readonly keyOf: readonly (ContactKey | null)[];
};

export function nodesOfParts(parts: readonly Part[]): Nodes {
  const firstNode = new Map<PartId, number>();
  const contactCount = new Map<PartId, number>();
  const keyOf: (ContactKey | null)[] = [null];
  for (const part of parts) {
    firstNode.set(part.id, keyOf.length);
    const keys = keysOf(part);
    contactCount.set(part.id, keys.length);
    for (const key of keys) keyOf.push(key);
  }
  return { firstNode, contactCount, keyOf };
}

/** A circuit that is begun already, so that only what depends on the state is added to it. */
export type Begun = {
  /** Its first elements. */
  readonly elements: readonly CircuitElement[];
  /** [nodes of the parts] the node that each became; −1 where none is left of it. */
  readonly place: Int32Array;
};

/** Grows a circuit element by element; used by the functions that know each kind of part. */
export class Builder {
  readonly elements: CircuitElement[];
  readonly owners = { role: [] as Role[], id: [] as (PartId | WireId)[], contact: [] as number[] };
  readonly choices: Choice[] = [];
  readonly boxes: Box[] = [];
  readonly givers: Giver[] = [];
  readonly takers: Taker[] = [];
  readonly assumed = new Assumed();
  readonly firstNode: ReadonlyMap<PartId, number>;
  readonly keyOf: readonly (ContactKey | null)[];

  /** @param begun what stands already; nothing is noted as assumed then, since it was when that was built */
  constructor(
    readonly setting: Setting,
    private readonly nodes: Nodes = nodesOfParts(Object.values(setting.harness.parts)),
    private readonly begun: Begun | null = null,
  ) {
    this.firstNode = nodes.firstNode;
    this.keyOf = nodes.keyOf;
    this.elements = begun ? begun.elements.slice() : [];
  }

  node(part: PartId, contact: number): number {
    const node = this.firstNode.get(part)! + contact - 1;
    return this.begun ? this.begun.place[node]! : node;
  }

  /** The node of a wire's end; −1 where it is loose or its contact is no more. */
  nodeOfEnd(end: { readonly part: PartId; readonly contact: number } | "loose"): number {
    if (end === "loose") return -1;
    const first = this.firstNode.get(end.part);
    if (first === undefined) return -1;
    const sound = end.contact >= 1 && end.contact <= this.nodes.contactCount.get(end.part)!;
    return sound ? first + end.contact - 1 : -1;
  }

  addWire(wire: WireId, element: CircuitElement): number {
    return this.push("wire", wire, 0, this.setting.broken.has(wire) ? open(element) : element);
  }

  /** @returns the element's place */
  add(part: PartId, role: Role, element: CircuitElement, contact = 0): number {
    const cut = this.setting.broken.has(part) && element.kind !== "coil";
    return this.push(role, part, contact, cut ? open(element) : element);
  }

  private push(role: Role, id: PartId | WireId, contact: number, element: CircuitElement): number {
    this.owners.role.push(role);
    this.owners.id.push(id);
    this.owners.contact.push(contact);
    return this.elements.push(element) - 1;
  }

  /** An element that voltages turn on and off; it begins as `isOn` says. */
  choose(
    part: PartId,
    role: Role,
    choice: Omit<Choice, "element"> & { isOn: boolean },
    contact: number,
  ): number {
    const { on, off, box, isOn } = choice;
    const element = this.add(part, role, isOn ? on : off, contact);
    if (!this.setting.broken.has(part)) this.choices.push({ element, on, off, box });
    return element;
  }

  /** The designation's id that an assumption is about. */
  note(...given: Parameters<Assumed["note"]>): void {
    if (!this.begun) this.assumed.note(...given);
  }
}

/** The same two nodes with nothing between them, so that the circuit keeps its shape. */
export function open(element: CircuitElement): CircuitElement {
  const [from, to] =
    element.kind === "supply" || element.kind === "output"
      ? [element.plus, element.minus]
      : element.kind === "diode"
        ? [element.anode, element.cathode]
        : [element.from, element.to];
  return { kind: "switch", from, to, closed: false, resistance_ohm: 0.01 };
}

export { FRAME };
