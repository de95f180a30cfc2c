import { sayColour } from "../../catalogue/colours.ts";
import { nameContact, nameKind } from "../../catalogue/describe.ts";
import { functionOf } from "../../catalogue/functions.ts";
import { contactKey, contactsOf, sameEnd } from "../../graph/contacts.ts";
import type { ContactRef, Harness, Part, Wire } from "../../graph/harness.ts";
import type { Traced } from "../../graph/trace.ts";

/** "X1, connector, Wren's radio plug, 8 contacts": a part as a screen reader says it. */
export function sayPart(part: Part): string {
  const count = contactsOf(part).length;
  return [
    part.designation,
    nameKind(part.kind),
    part.name,
    `${count} ${count === 1 ? "contact" : "contacts"}`,
  ]
    .filter((word) => word !== "")
    .join(", ");
}

/** What a contact is for, where anything is known: its function, or the chart's own words. */
function purpose(harness: Pick<Harness, "parts">, ref: ContactRef): string {
  const part = harness.parts[ref.part];
  const contact = part && contactsOf(part)[ref.contact - 1];
  if (!contact) return "";
  if (contact.function !== "unknown") return functionOf(contact.function).name;
  return contact.cavity?.text ?? "";
}

/**
 * "X1.A4, constant feed, red lead, joined by W4 to XJ1": a contact as a screen reader says it.
 * @param reading what it shows, where readings are on: "12.36 V"
 */
export function sayContact(
  harness: Pick<Harness, "parts">,
  traced: Traced,
  ref: ContactRef,
  reading = "",
): string {
  const part = harness.parts[ref.part];
  const contact = part && contactsOf(part)[ref.contact - 1];
  const wires = traced.wiresAt(contactKey(ref.part, ref.contact));
  const words = [nameContact(harness, ref), reading, purpose(harness, ref)];
  const lead = contact?.cavity?.lead;
  if (lead) words.push(`${sayColour(lead.colour)} lead`);
  if (wires.length) words.push(...wires.map((wire) => `joined by ${sayReach(harness, wire, ref)}`));
  else words.push(contact?.cavity?.use === "spare" ? "spare, no wire" : "no wire");
  return words.filter((word) => word !== "").join(", ");
}

function sayReach(harness: Pick<Harness, "parts">, wire: Wire, from: ContactRef): string {
  const far = sameEnd(wire.ends[0], from) ? wire.ends[1] : wire.ends[0];
  return `${wire.designation} to ${far === "loose" ? "a loose end" : nameContact(harness, far)}`;
}

/** "W4, red, from X1.A4 to XJ1": a wire as a screen reader says it, with its reading where readings are on. */
export function sayWire(harness: Pick<Harness, "parts">, wire: Wire, reading = ""): string {
  const [a, b] = wire.ends.map((end) => (end === "loose" ? "a loose end" : nameContact(harness, end)));
  const size = wire.area_mm2 === "unknown" ? "" : `, ${Number(wire.area_mm2.toPrecision(3))} mm²`;
  const shown = reading === "" ? "" : `, ${reading}`;
  return `${wire.designation}, ${sayColour(wire.colour)}${size}, from ${a} to ${b}${shown}`;
}
