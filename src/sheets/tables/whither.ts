import { nameContact } from "../../catalogue/describe.ts";
import { functionOf } from "../../catalogue/functions.ts";
import { type ContactKey, contactKey, keyOfEnd } from "../../graph/contacts.ts";
import type { ContactRef, End, Part, PartId, Wire } from "../../graph/harness.ts";
import type { Circuit } from "../../graph/trace.ts";
import { compareNames } from "../../rules/words.ts";
import type { TableSource } from "./table.ts";

/** A circuit with more contacts than this is told by the first of them and their count. */
const MOST = 24;

/** Answers where leads go, remembering each circuit's answer. */
export class Whither {
  private readonly names = new Map<number, readonly (readonly [ContactKey, string])[]>();
  private readonly functions = new Map<number, string>();

  constructor(private readonly source: TableSource) {}

  /** "X2.1, F1.1": what copper joins to a contact, joints left out; a cap and a loose end are told as such. */
  from(at: ContactRef): string {
    const key = contactKey(at.part, at.contact);
    const circuit = this.source.traced.circuitOf(key);
    if (!circuit) return "";
    const words: string[] = [];
    const all = this.namesOf(circuit);
    for (const [other, name] of all) {
      if (other === key) continue;
      if (words.length === MOST) {
        words.push(`and ${all.length - 1 - MOST} more`);
        break;
      }
      words.push(name);
    }
    for (const id of circuit.loose) words.push(`${this.source.harness.wires[id]?.designation ?? id} loose`);
    return words.join(", ");
  }

  private namesOf(circuit: Circuit): readonly (readonly [ContactKey, string])[] {
    const known = this.names.get(circuit.id);
    if (known) return known;
    const { harness, traced } = this.source;
    const made: [ContactKey, string][] = [];
    for (const key of circuit.contacts) {
      const part = traced.partOf(key);
      if (!part || part.kind === "splice") continue;
      made.push([key, part.kind === "cap" ? `cap ${part.designation}` : nameContact(harness, key)]);
    }
    made.sort((a, b) => compareNames(a[1], b[1]));
    this.names.set(circuit.id, made);
    return made;
  }

  /** The function of a circuit in words: what its housings say, the first that is known. "" where none is. */
  functionOf(circuit: Circuit | undefined): string {
    const id = this.functionIdOf(circuit);
    return id === "unknown" ? "" : functionOf(id).name;
  }

  functionIdOf(circuit: Circuit | undefined): string {
    if (!circuit) return "unknown";
    const known = this.functions.get(circuit.id);
    if (known !== undefined) return known;
    const { traced } = this.source;
    let found = "unknown";
    for (const key of circuit.contacts) {
      const contact = traced.contact(key);
      if (!contact || contact.function === "unknown" || contact.function === "not-used") continue;
      found = contact.function;
      if (contact.cavity) break;
    }
    this.functions.set(circuit.id, found);
    return found;
  }

  /** The function of a wire: of the cavity it lands in, else of its circuit. */
  functionOfWire(wire: Wire): string {
    for (const end of wire.ends) {
      const key = keyOfEnd(end);
      const contact = key && this.source.traced.contact(key);
      if (contact?.cavity && contact.function !== "unknown") return functionOf(contact.function).name;
    }
    return this.functionOf(this.source.traced.circuitOfWire(wire.id));
  }

  nameOfEnd(end: End): string {
    return end === "loose" ? "loose" : nameContact(this.source.harness, end);
  }
}

/** Parts in the order of their designations, X2 before X10. */
export function partsInOrder(parts: Readonly<Record<PartId, Part>>): Part[] {
  return Object.values(parts).sort((a, b) => compareNames(a.designation, b.designation));
}
