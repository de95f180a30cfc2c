import { nameContactOf } from "../../catalogue/describe.ts";
import { functionOf } from "../../catalogue/functions.ts";
import { type Contact, contactKey, contactsOf } from "../../graph/contacts.ts";
import type { Cap, Part, Wire, WireId } from "../../graph/harness.ts";
import type { Circuit } from "../../graph/trace.ts";
import { CAPS } from "../part-drawing/joint.ts";
import { type Cell, cell, column, strong, type Table, type TableSource } from "./table.ts";
import { partsInOrder, Whither } from "./whither.ts";
import { colourCell } from "./wire-table.ts";

/** Leads that join nothing, and how each is made safe; cavities that stay empty on purpose. */
export function spareTable(source: TableSource): Table {
  const whither = new Whither(source);
  const covered = new Set<WireId>();
  const rows: Cell[][] = [];
  for (const part of partsInOrder(source.harness.parts)) {
    if (part.kind !== "connector" && part.kind !== "module") continue;
    for (const contact of contactsOf(part)) {
      const row = contactRow(source, part, contact, covered);
      if (row) rows.push(row);
    }
  }
  // What ends in a cap or nowhere without coming from a housing.
  for (const wire of Object.values(source.harness.wires)) {
    if (covered.has(wire.id)) continue;
    const circuit = source.traced.circuitOfWire(wire.id);
    const state = stateOf(source, circuit, wire);
    if (!state) continue;
    for (const id of circuit?.wires ?? []) covered.add(id);
    rows.push([
      strong(wire.ends.map((end) => whither.nameOfEnd(end)).join(" to ")),
      cell(whither.functionOf(circuit)),
      colourCell(wire.colour),
      cell(wire.designation),
      cell(wire.label),
      cell(""),
      cell(state),
    ]);
  }
  return {
    id: "spares",
    title: "Spares",
    remark: "Each spare is made safe by itself, folded back and tied where it can be found.",
    empty: "No spares.",
    columns: [
      column("lead", "Lead", 20),
      column("function", "Function", 28),
      column("colour", "Colour", 12),
      column("wire", "Wire", 12),
      column("label", "Label", 20),
      column("gives", "Gives", 10),
      column("state", "How it is made safe", 44),
    ],
    rows,
  };
}

function contactRow(source: TableSource, part: Part, contact: Contact, covered: Set<WireId>): Cell[] | null {
  const { traced } = source;
  const cavity = contact.cavity;
  if (!cavity) return null;
  const key = contactKey(part.id, contact.number);
  const wires = traced.wiresAt(key);
  const circuit = traced.circuitOf(key);
  const mated = (circuit?.contacts.length ?? 0) > 1;
  const state = wires.length > 0 || mated ? stateOf(source, circuit, wires[0]) : emptyState(cavity);
  if (!state && cavity.use !== "spare" && cavity.use !== "plugged") return null;
  if (state) for (const id of circuit?.wires ?? []) covered.add(id);
  return [
    strong(nameContactOf(part, contact, contact.number)),
    cell(contact.function === "unknown" ? cavity.text : functionOf(contact.function).name),
    cavity.lead || wires[0] ? colourCell(wires[0]?.colour ?? cavity.lead?.colour ?? null) : cell(""),
    cell(wires.map((wire) => wire.designation).join(", ")),
    cell(wires[0]?.label ?? ""),
    cell(contact.direction === "gives" || contact.direction === "both" ? "yes" : ""),
    cell(state ?? `marked ${cavity.use}, yet joined`),
  ];
}

/** What is said of a circuit that ends in a cap or in the air; `null` where it joins something. */
function stateOf(source: TableSource, circuit: Circuit | undefined, wire: Wire | undefined): string | null {
  if (!circuit) return null;
  const caps: Cap[] = [];
  for (const key of circuit.contacts) {
    const part = source.traced.partOf(key);
    if (part?.kind === "cap") caps.push(part);
  }
  const words = caps.map((cap) => `${cap.designation} ${CAPS[cap.method].words}`);
  for (const id of circuit.loose) {
    words.push(`${source.harness.wires[id]?.designation ?? wire?.designation ?? id} hangs loose, not capped`);
  }
  return words.length > 0 ? words.join("; ") : null;
}

function emptyState(cavity: NonNullable<Contact["cavity"]>): string | null {
  if (cavity.use === "plugged") return "cavity plugged";
  if (cavity.lead) return "lead of the chart, nothing joined, no cap drawn";
  return cavity.use === "spare" ? "no lead" : null;
}
