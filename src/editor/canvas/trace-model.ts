import { contactKey, refOfKey } from "../../graph/contacts.ts";
import type { PartId, WireId } from "../../graph/harness.ts";
import type { Circuit, Traced } from "../../graph/trace.ts";
import type { Pointed, Selection } from "../state/store.ts";

/** What lifts off the drawing while all else steps back. */
export type Lifted = {
  readonly circuit: Circuit;
  readonly parts: ReadonlySet<PartId>;
  readonly wires: ReadonlySet<WireId>;
};

/** The circuit that is meant: what is pointed at, or else the one contact or wire that is selected. */
export function circuitMeant(traced: Traced, pointed: Pointed, selection: Selection): Circuit | null {
  const at = pointed ? circuitAt(traced, pointed) : null;
  if (at) return at;
  const [wire] = selection.wires;
  if (wire && selection.wires.size === 1 && selection.parts.size === 0) {
    return traced.circuitOfWire(wire) ?? null;
  }
  const { contact } = selection;
  return contact ? (traced.circuitOf(contactKey(contact.part, contact.contact)) ?? null) : null;
}

function circuitAt(traced: Traced, pointed: NonNullable<Pointed>): Circuit | null {
  if ("wire" in pointed) return traced.circuitOfWire(pointed.wire) ?? null;
  return traced.circuitOf(contactKey(pointed.part, pointed.contact)) ?? null;
}

/** The parts and wires of a circuit; `null` for a bare contact, which lifts nothing. */
export function liftedBy(circuit: Circuit | null): Lifted | null {
  if (!circuit || circuit.wires.length === 0) return null;
  return {
    circuit,
    parts: new Set(circuit.contacts.map((key) => refOfKey(key).part)),
    wires: new Set(circuit.wires),
  };
}
