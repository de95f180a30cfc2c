import { nameContact } from "../../../catalogue/describe.ts";
import type { Readings } from "../../../electrical/operate/readings.ts";
import { whyVolts } from "../../../electrical/operate/why.ts";
import { contactKey } from "../../../graph/contacts.ts";
import type { ContactRef, Harness, Part, Wire } from "../../../graph/harness.ts";
import type { Selection } from "../../state/store.ts";
import type { Stater } from "./basis-model.ts";
import type { FigureGroup } from "./figure-line.ts";
import { figuresOfHarness } from "./harness-figures-model.ts";
import { figuresOfPart, titleOf } from "./part-figures-model.ts";
import { figuresOfWire } from "./wire-figures-model.ts";

/** What the panel speaks of: one thing, or the whole harness. */
export type Subject =
  | { readonly kind: "wire"; readonly wire: Wire }
  | { readonly kind: "part"; readonly part: Part; readonly contact: ContactRef | null }
  | { readonly kind: "several"; readonly count: number }
  | { readonly kind: "harness" };

/** What a selection is about; the keyboard's contact counts as its part. */
export function subjectOf(harness: Harness, selection: Selection): Subject {
  const parts = [...selection.parts].flatMap((id) => harness.parts[id] ?? []);
  const wires = [...selection.wires].flatMap((id) => harness.wires[id] ?? []);
  if (parts.length + wires.length > 1) return { kind: "several", count: parts.length + wires.length };
  const [wire] = wires;
  if (wire) return { kind: "wire", wire };
  const { contact } = selection;
  const part = parts[0] ?? (contact ? harness.parts[contact.part] : undefined);
  if (!part) return { kind: "harness" };
  return { kind: "part", part, contact: contact?.part === part.id ? contact : null };
}

/** "W3 wire", "X1.4", "The whole harness" */
export function titleOfSubject(harness: Harness, subject: Subject): string {
  switch (subject.kind) {
    case "wire":
      return `${subject.wire.designation} wire`;
    case "part":
      return subject.contact ? `${nameContact(harness, subject.contact)} contact` : titleOf(subject.part);
    case "several":
      return `${subject.count} things are selected`;
    case "harness":
      return "The whole harness";
  }
}

/** The figures of what is selected. */
export function figuresOf(readings: Readings, subject: Subject): readonly FigureGroup[] {
  switch (subject.kind) {
    case "wire":
      return figuresOfWire(readings, subject.wire.id);
    case "part":
      return [...contactFigures(readings, subject.contact), ...figuresOfPart(readings, subject.part.id)];
    case "several":
      return [];
    case "harness":
      return figuresOfHarness(readings);
  }
}

function contactFigures(readings: Readings, contact: ContactRef | null): readonly FigureGroup[] {
  if (!contact) return [];
  const name = nameContact(readings.solved.harness, contact);
  const answer = whyVolts(readings, contactKey(contact.part, contact.contact));
  return [
    {
      heading: name,
      lines: [{ id: "contact-volts", name: "Volts, over the frame", answer }],
    },
  ];
}

/** The ids that assumptions of a subject are filtered by; empty for the whole harness. */
export function idsOf(readings: Readings, subject: Subject): ReadonlySet<string> {
  if (subject.kind === "wire") return new Set([subject.wire.id]);
  if (subject.kind !== "part") return new Set();
  const ids = new Set<string>([subject.part.id]);
  for (const wire of Object.values(readings.solved.harness.wires))
    if (wire.ends.some((end) => end !== "loose" && end.part === subject.part.id)) ids.add(wire.id);
  return ids;
}

/** What states the values that the figures of a subject rest on; `null` where it states none. */
export function staterOf(subject: Subject): Stater | null {
  switch (subject.kind) {
    case "wire":
      return { wire: subject.wire.id };
    case "part":
      return { part: subject.part.id };
    case "several":
      return null;
    case "harness":
      return "harness";
  }
}
