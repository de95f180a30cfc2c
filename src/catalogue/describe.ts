import { type Contact, type ContactKey, contactsOf, refOfKey } from "../graph/contacts.ts";
import type { ContactRef, Harness, Part } from "../graph/harness.ts";

/** "X1.A4": how a contact is named in every table, message and command. One-contact parts need no label. */
export function nameContact(harness: Pick<Harness, "parts">, at: ContactRef | ContactKey): string {
  const ref = typeof at === "string" ? refOfKey(at) : at;
  const part = harness.parts[ref.part];
  if (!part) return `${ref.part}.${ref.contact}`;
  const contact = contactsOf(part)[ref.contact - 1];
  return nameContactOf(part, contact, ref.contact);
}

export function nameContactOf(part: Part, contact: Contact | undefined, number: number): string {
  if (part.kind === "ground" || part.kind === "cap") return part.designation;
  return `${part.designation}.${contact?.label ?? number}`;
}

/** Finds the contact that "X1.A4" names; `null` where there is none. */
export function findContact(harness: Pick<Harness, "parts">, name: string): ContactRef | null {
  for (const part of Object.values(harness.parts)) {
    if (name === part.designation && contactsOf(part).length === 1) return { part: part.id, contact: 1 };
    if (!name.startsWith(`${part.designation}.`)) continue;
    const label = name.slice(part.designation.length + 1);
    const contact = contactsOf(part).find(
      (one) => one.label === label || (label === "-" && one.label === "−"),
    );
    if (contact) return { part: part.id, contact: contact.number };
  }
  return null;
}

const KIND_WORDS: Readonly<Record<Part["kind"], string>> = {
  connector: "connector",
  splice: "splice",
  cap: "cap",
  ground: "ground",
  supply: "battery",
  fuse: "fuse",
  relay: "relay",
  switch: "switch",
  diode: "diode",
  resistor: "resistor",
  capacitor: "capacitor",
  load: "load",
  speaker: "speaker",
  module: "module",
};

/** The trade's word for a kind of part. */
export function nameKind(kind: Part["kind"]): string {
  return KIND_WORDS[kind];
}
