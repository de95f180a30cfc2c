import { contactsOf } from "../../graph/contacts.ts";
import type { Connector, Harness, Module } from "../../graph/harness.ts";
import type { Primitive } from "../../layout/drawing.ts";
import { HEAD, ROW, type Shape, SWITCH_ROW, switchRows } from "../../layout/geometry/shape.ts";
import { drawRow, type Row } from "./cavity-row.ts";
import { drawHead } from "./head.ts";
import { box, HAIR, HEAVY, inkStroke, line } from "./pen.ts";
import { drawSwitchBank } from "./switch-bank.ts";

/** A connector or a module: a ruled block with a head and one row a cavity. */
export function drawHousing(
  part: Connector | Module,
  shape: Shape,
  left: boolean,
  harness: Harness,
): readonly Primitive[] {
  const { width, height } = shape;
  const headBottom = HEAD + switchRows(part) * SWITCH_ROW;
  const items: Primitive[] = [box(0, 0, width, height, { fill: "panel" }), ...drawHead(part, width, harness)];
  if (part.kind === "module" && part.switches.length > 0) {
    items.push(line(0, HEAD, width, HEAD, HAIR), ...drawSwitchBank(part.switches, width));
  }
  const rows = rowsOf(shape);
  for (const contact of contactsOf(part)) {
    const row = rows.get(contact.number);
    if (!row) continue;
    items.push(...drawRow(contact, row, width, left));
    if (row.top > headBottom) items.push(line(0, row.top, width, row.top, HAIR, "quiet"));
  }
  const bottom = Math.max(headBottom, ...[...rows.values()].map((row) => row.bottom));
  if (rows.size > 0) {
    items.push(line(0, headBottom, width, headBottom, HEAVY), line(0, bottom, width, bottom, HAIR));
  }
  items.push(box(0, 0, width, height, { stroke: inkStroke(HEAVY) }));
  return items;
}

/** The rows of a housing by contact; a row grows with the wires that land on it. */
export function rowsOf(shape: Shape): Map<number, Row> {
  const slots = new Map<number, number[]>();
  for (const port of shape.ports) {
    const known = slots.get(port.contact);
    if (known) known.push(port.y);
    else slots.set(port.contact, [port.y]);
  }
  const rows = new Map<number, Row>();
  for (const [contact, middles] of slots) {
    rows.set(contact, {
      top: middles[0]! - ROW / 2,
      bottom: middles.at(-1)! + ROW / 2,
      slots: middles,
    });
  }
  return rows;
}
