import { sayColour } from "../../catalogue/colours.ts";
import { nameContact } from "../../catalogue/describe.ts";
import { functionOf } from "../../catalogue/functions.ts";
import { contactKey, refOfKey } from "../../graph/contacts.ts";
import type { Harness } from "../../graph/harness.ts";
import type { Circuit, Traced } from "../../graph/trace.ts";
import type { Pointed, Selection } from "../state/store.ts";

const MOST_NAMED = 6;

/** What a line at the foot of the page says of the thing pointed at, or else of what is selected. */
export function traceWords(harness: Harness, traced: Traced, pointed: Pointed, selection: Selection): string {
  const [onlyWire] = selection.wires.size === 1 ? selection.wires : [];
  const at = pointed ?? selection.contact ?? (onlyWire ? { wire: onlyWire } : null);
  if (at) {
    if ("wire" in at) {
      const wire = harness.wires[at.wire];
      const circuit = traced.circuitOfWire(at.wire);
      if (!wire || !circuit) return "";
      return `${wire.designation}, ${sayColour(wire.colour)}: ${circuitWords(harness, circuit)}`;
    }
    const circuit = traced.circuitOf(contactKey(at.part, at.contact));
    if (!circuit) return "";
    if (!circuit.wires.length && circuit.contacts.length < 2) {
      const words = contactWords(harness, traced, contactKey(at.part, at.contact));
      return `${words}: nothing is joined to it`;
    }
    return `${nameContact(harness, at)}: ${circuitWords(harness, circuit)}`;
  }
  const count = selection.parts.size + selection.wires.size;
  if (count > 0) return selectionWords(harness, selection);
  return "";
}

/**
 * "joins X1.A4 constant feed, X2.7 constant feed; one loose end". Joints are named last and only where nothing
 * else is on the circuit: what matters is what stands at its ends.
 */
export function circuitWords(harness: Harness, circuit: Circuit): string {
  const ends: string[] = [];
  let joints = 0;
  let capped = false;
  for (const key of circuit.contacts) {
    const { part: id, contact } = refOfKey(key);
    const part = harness.parts[id];
    if (!part) continue;
    if (part.kind === "splice") {
      if (contact === 1) joints++;
      continue;
    }
    if (part.kind === "cap") capped = true;
    ends.push(nameWithFunction(harness, key));
  }
  const named = ends.length > MOST_NAMED ? ends.slice(0, MOST_NAMED - 1) : ends;
  const more = ends.length - named.length;
  const list = more > 0 ? `${named.join(", ")} and ${more} more` : named.join(", ");
  const notes: string[] = [];
  if (joints) notes.push(joints === 1 ? "one joint" : `${joints} joints`);
  if (circuit.loose.length) {
    notes.push(circuit.loose.length === 1 ? "one loose end" : `${circuit.loose.length} loose ends`);
  }
  const start = ends.length > 1 ? `joins ${list}` : ends.length === 1 ? `only on ${list}` : "on no contact";
  if (capped && ends.length === 2)
    return `${list}${notes.length ? `; ${notes.join(", ")}` : ""}: a capped spare`;
  return notes.length ? `${start}; ${notes.join(", ")}` : start;
}

function nameWithFunction(harness: Harness, key: Circuit["contacts"][number]): string {
  const ref = refOfKey(key);
  const part = harness.parts[ref.part];
  const name = nameContact(harness, ref);
  if (part?.kind !== "connector" && part?.kind !== "module") return name;
  const cavity = part.cavities[ref.contact - 1];
  if (!cavity) return name;
  const words = cavity.function === "unknown" ? cavity.text : functionOf(cavity.function).name;
  return words ? `${name} ${words}` : name;
}

function contactWords(harness: Harness, traced: Traced, key: Circuit["contacts"][number]): string {
  const lead = traced.contact(key)?.cavity?.lead;
  const words = nameWithFunction(harness, key);
  return lead?.colour ? `${words}, lead ${sayColour(lead.colour)}` : words;
}

function selectionWords(harness: Harness, selection: Selection): string {
  const parts = [...selection.parts].flatMap((id) => harness.parts[id] ?? []);
  const only = parts.length === 1 && selection.wires.size === 0 ? parts[0] : undefined;
  if (only) return only.name ? `${only.designation}, ${only.name}` : only.designation;
  const words: string[] = [];
  if (parts.length) words.push(parts.length === 1 ? "1 part" : `${parts.length} parts`);
  if (selection.wires.size) {
    words.push(selection.wires.size === 1 ? "1 wire" : `${selection.wires.size} wires`);
  }
  return `${words.join(" and ")} selected`;
}
