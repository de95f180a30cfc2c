import { sayColour } from "../../catalogue/colours.ts";
import { contactKey } from "../../graph/contacts.ts";
import type { Harness, Wire } from "../../graph/harness.ts";
import type { Traced } from "../../graph/trace.ts";
import { sayCircuit } from "../../rules/say.ts";
import type { Pointed, Selection } from "../state/store.ts";

/** What a line at the foot of the page says of the thing pointed at, or else of what is selected. */
export function traceWords(harness: Harness, traced: Traced, pointed: Pointed, selection: Selection): string {
  const [onlyWire] = selection.wires.size === 1 && selection.parts.size === 0 ? selection.wires : [];
  // The keyboard stands on a wire and remembers the contact it came from: the wire is meant.
  const at = pointed ?? (onlyWire ? { wire: onlyWire } : selection.contact);
  if (at) {
    if ("wire" in at) {
      const wire = harness.wires[at.wire];
      return wire
        ? `${wire.designation}, ${sayColour(wire.colour)}. ${wireWords(harness, traced, wire)}`
        : "";
    }
    return sayCircuit(harness, traced, contactKey(at.part, at.contact));
  }
  const count = selection.parts.size + selection.wires.size;
  if (count > 0) return selectionWords(harness, selection);
  return "";
}

/** What a wire's circuit joins, told from the end that stands on a part. */
export function wireWords(harness: Harness, traced: Traced, wire: Wire): string {
  const end = wire.ends.find((one) => one !== "loose");
  if (!end) return "Both its ends hang loose.";
  return sayCircuit(harness, traced, contactKey(end.part, end.contact));
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
