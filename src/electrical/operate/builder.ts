import { type ContactKey, keysOf } from "../../graph/contacts.ts";
import type { Harness, PartId, WireId } from "../../graph/harness.ts";
import type { CircuitElement } from "../solve/circuit.ts";
import { Assumed, type Usual } from "./assumed.ts";
import { type Box, type Choice, FRAME, type Giver, type Role, type Taker } from "./built.ts";
import type { KeyState } from "./key-state.ts";

/** What a circuit is built from, besides the harness. */
export type Setting = {
  readonly harness: Harness;
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

/** Grows a circuit element by element; used by the functions that know each kind of part. */
export class Builder {
  readonly elements: CircuitElement[] = [];
  readonly owners = { role: [] as Role[], id: [] as (PartId | WireId)[], contact: [] as number[] };
  readonly choices: Choice[] = [];
  readonly boxes: Box[] = [];
  readonly givers: Giver[] = [];
  readonly takers: Taker[] = [];
  readonly assumed = new Assumed();
  readonly firstNode = new Map<PartId, number>();
  readonly keyOf: (ContactKey | null)[] = [null];
  private readonly contactCount = new Map<PartId, number>();

  constructor(readonly setting: Setting) {
    for (const part of Object.values(setting.harness.parts)) {
      this.firstNode.set(part.id, this.keyOf.length);
      const keys = keysOf(part);
      this.contactCount.set(part.id, keys.length);
      for (const key of keys) this.keyOf.push(key);
    }
  }

  node(part: PartId, contact: number): number {
    return this.firstNode.get(part)! + contact - 1;
  }

  /** The node of a wire's end; −1 where it is loose or its contact is no more. */
  nodeOfEnd(end: { readonly part: PartId; readonly contact: number } | "loose"): number {
    if (end === "loose") return -1;
    const first = this.firstNode.get(end.part);
    if (first === undefined) return -1;
    const sound = end.contact >= 1 && end.contact <= this.contactCount.get(end.part)!;
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
    this.assumed.note(...given);
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
