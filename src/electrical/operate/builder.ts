import { type ContactKey, contactKey, keysOf } from "../../graph/contacts.ts";
import type { Harness, PartId, WireId } from "../../graph/harness.ts";
import type { CircuitElement } from "../solve/circuit.ts";
import { Assumed, type Usual } from "./assumed.ts";
import { type Box, type Choice, FRAME, type Giver, type Owner, type Role, type Taker } from "./built.ts";
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
  readonly owners: Owner[] = [];
  readonly choices: Choice[] = [];
  readonly boxes: Box[] = [];
  readonly givers: Giver[] = [];
  readonly takers: Taker[] = [];
  readonly assumed = new Assumed();
  readonly firstNode = new Map<PartId, number>();
  readonly keyOf: (ContactKey | null)[] = [null];
  readonly elementsOfPart = new Map<PartId, number[]>();

  constructor(readonly setting: Setting) {
    for (const part of Object.values(setting.harness.parts)) {
      this.firstNode.set(part.id, this.keyOf.length);
      for (const key of keysOf(part)) this.keyOf.push(key);
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
    const node = first + end.contact - 1;
    return this.keyOf[node] === contactKey(end.part, end.contact) ? node : -1;
  }

  addWire(wire: WireId, element: CircuitElement): number {
    this.owners.push({ role: "wire", part: null, wire, contact: 0 });
    return this.elements.push(this.setting.broken.has(wire) ? open(element) : element) - 1;
  }

  /** @returns the element's place */
  add(part: PartId, role: Role, element: CircuitElement, contact = 0): number {
    this.owners.push({ role, part, wire: null, contact });
    const cut = this.setting.broken.has(part) && element.kind !== "coil";
    const at = this.elements.push(cut ? open(element) : element) - 1;
    const list = this.elementsOfPart.get(part);
    if (list) list.push(at);
    else this.elementsOfPart.set(part, [at]);
    return at;
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
