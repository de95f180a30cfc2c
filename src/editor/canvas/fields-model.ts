import { readColour, writeColour } from "../../catalogue/colours.ts";
import { FUNCTIONS } from "../../catalogue/functions.ts";
import { contactsOf } from "../../graph/contacts.ts";
import type { Edit, Refused } from "../../graph/edits/edit.ts";
import { refused } from "../../graph/edits/edit.ts";
import type { Harness, PartId, WireId } from "../../graph/harness.ts";
import { BODY_TEXT, HEAD_TEXT, SMALL_TEXT } from "../../layout/geometry/caption.ts";
import { facesLeft, LABEL_CELL, LEAD_CELL, MARK_CELL, ROW } from "../../layout/geometry/shape.ts";
import { LABEL_SIZE } from "../../layout/label.ts";
import { cavityText, type PlacedPart, type PlacedWire, type Scene } from "../../layout/scene.ts";
import { textWidth } from "../../layout/text/measure.ts";
import type { Box } from "./hit-model.ts";

/** A text on the drawing that can be edited where it stands. */
export type Field = {
  readonly at:
    | { readonly part: PartId; readonly what: "designation" | "name" }
    | { readonly part: PartId; readonly contact: number; readonly what: "label" | "lead" | "function" }
    | { readonly wire: WireId; readonly what: "label" | "colour" };
  /** What a screen reader calls it: "Function of X1.A4". */
  readonly name: string;
  readonly text: string;
  /** Over the text itself, drawing units. */
  readonly box: Box;
  readonly size: number;
  readonly bold: boolean;
  readonly align: "start" | "middle" | "end";
};

/** The fields of a part in reading order: Tab goes from one to the next. */
export function fieldsOfPart(placed: PlacedPart): readonly Field[] {
  const { part, shape, x, y, turned } = placed;
  if (part.kind !== "connector" && part.kind !== "module") return symbolFields(placed);
  const fields: Field[] = [
    {
      at: { part: part.id, what: "designation" },
      name: `Designation of ${part.designation}`,
      text: part.designation,
      box: { x: x + 4, y: y + 2, width: Math.max(56, wide(part.designation, HEAD_TEXT)), height: 24 },
      size: HEAD_TEXT,
      bold: true,
      align: "start",
    },
    {
      at: { part: part.id, what: "name" },
      name: `Name of ${part.designation}`,
      text: part.name,
      box: { x: x + 4, y: y + 24, width: shape.width - 8, height: 17 },
      size: BODY_TEXT,
      bold: false,
      align: "start",
    },
  ];
  const left = facesLeft(part, turned);
  const cell = (offset: number, width: number): number =>
    left ? x + offset : x + shape.width - offset - width;
  for (const contact of contactsOf(part)) {
    const port = shape.ports.find((one) => one.contact === contact.number);
    if (!port || !contact.cavity) continue;
    const top = y + port.y - ROW / 2 + 1;
    const name = `${part.designation}.${contact.label}`;
    const before = LABEL_CELL + LEAD_CELL + MARK_CELL;
    const at = { part: part.id, contact: contact.number };
    const row = { y: top, height: ROW - 2 };
    fields.push(
      {
        at: { ...at, what: "label" },
        name: `Cavity label of ${name}`,
        text: contact.label,
        box: { x: cell(0, LABEL_CELL), width: LABEL_CELL, ...row },
        size: BODY_TEXT,
        bold: true,
        align: "middle",
      },
      {
        at: { ...at, what: "lead" },
        name: `Lead colour of ${name}`,
        text: writeColour(contact.cavity.lead?.colour ?? null),
        box: { x: cell(LABEL_CELL, LEAD_CELL), width: LEAD_CELL, ...row },
        size: SMALL_TEXT,
        bold: false,
        align: "middle",
      },
      {
        at: { ...at, what: "function" },
        name: `Function of ${name}`,
        text: contact.cavity.function === "unknown" ? contact.cavity.text : cavityText(contact.cavity),
        box: { x: cell(before, shape.width - before), width: shape.width - before, ...row },
        size: BODY_TEXT,
        bold: false,
        align: left ? "start" : "end",
      },
    );
  }
  return fields;
}

function wide(text: string, size: number): number {
  return textWidth(text, size, "bold") + 16;
}

function symbolFields({ part, shape, x, y }: PlacedPart): readonly Field[] {
  const fields: Field[] = [
    {
      at: { part: part.id, what: "designation" },
      name: `Designation of ${part.designation}`,
      text: part.designation,
      box: { x, y: y + 1, width: Math.max(40, shape.width), height: 17 },
      size: BODY_TEXT,
      bold: true,
      align: "middle",
    },
  ];
  if (part.kind === "splice" || part.kind === "cap") return fields;
  fields.push({
    at: { part: part.id, what: "name" },
    name: `Name of ${part.designation}`,
    text: part.name,
    box: { x, y: y + shape.height - 15, width: Math.max(64, shape.width), height: 16 },
    size: SMALL_TEXT,
    bold: false,
    align: "middle",
  });
  return fields;
}

/** A wire's fields: what is printed on it, then its colour, both where its first label stands. */
export function fieldsOfWire({ wire, labels, path }: PlacedWire): readonly Field[] {
  const label = labels[0];
  const x = label ? label.x - label.width / 2 : (path[0]! + path[2]!) / 2 - 32;
  const y = (label?.y ?? (path[1]! + path[3]!) / 2) - 9;
  const look = { size: LABEL_SIZE, bold: false, align: "start" as const };
  const written = wire.label || wire.designation;
  const half = Math.max(40, textWidth(written, LABEL_SIZE, "regular") + 12);
  return [
    {
      at: { wire: wire.id, what: "label" },
      name: `Label of ${wire.designation}`,
      text: written,
      box: { x: x - 4, y, width: half, height: 18 },
      ...look,
    },
    {
      at: { wire: wire.id, what: "colour" },
      name: `Colour of ${wire.designation}`,
      text: writeColour(wire.colour),
      box: { x: x - 4 + half, y, width: 56, height: 18 },
      ...look,
    },
  ];
}

/** The field under a point of the drawing, if there is a text there that can be edited. */
export function fieldAt(scene: Scene, x: number, y: number, on: PartId | WireId): Field | null {
  const placed = scene.parts.get(on as PartId);
  if (placed) {
    return (
      fieldsOfPart(placed).find(
        ({ box }) => x >= box.x && x <= box.x + box.width && y >= box.y && y <= box.y + box.height,
      ) ?? null
    );
  }
  const wire = scene.wires.get(on as WireId);
  return wire ? (fieldsOfWire(wire)[0] ?? null) : null;
}

/** The same field after the drawing has changed, or its neighbour `step` further on; `null` past the ends. */
export function fieldBeside(scene: Scene, field: Field, step: -1 | 0 | 1): Field | null {
  const { at } = field;
  const placed = "part" in at ? scene.parts.get(at.part) : scene.wires.get(at.wire);
  if (!placed) return null;
  const all = "part" in placed ? fieldsOfPart(placed) : fieldsOfWire(placed);
  const here = all.findIndex((one) => JSON.stringify(one.at) === JSON.stringify(at));
  return all[here + step] ?? null;
}

/**
 * What committing a field's text changes. A function's own name, or a word that charts use for it, states the
 * function; anything else is kept as the chart's own words.
 * @returns `null` where the text is as before
 */
export function commitField(harness: Harness, field: Field, typed: string): Edit | Refused | null {
  const text = typed.trim();
  const { at } = field;
  if (text === field.text.trim()) return null;
  if ("wire" in at) return commitWire(harness, at.wire, at.what, text);
  if (!("contact" in at)) {
    if (at.what === "designation" && text === "") return refused("a part needs a designation");
    return { kind: "change-part", part: at.part, changes: { [at.what]: text } };
  }
  const change = (changes: Extract<Edit, { kind: "change-cavity" }>["changes"]): Edit => ({
    kind: "change-cavity",
    part: at.part,
    contact: at.contact,
    changes,
  });
  if (at.what === "label") return text === "" ? refused("a cavity needs a label") : change({ label: text });
  if (at.what === "lead") return commitLead(harness, at.part, at.contact, text, change);
  const known = functionFor(text);
  if (known) return change({ function: known });
  return change({ function: "unknown", text });
}

function commitLead(
  harness: Harness,
  part: PartId,
  contact: number,
  text: string,
  change: (changes: Extract<Edit, { kind: "change-cavity" }>["changes"]) => Edit,
): Edit | Refused {
  const owner = harness.parts[part];
  const lead = owner && contactsOf(owner)[contact - 1]?.cavity?.lead;
  if (text === "") return change({ lead: null });
  const colour = readColour(text);
  if (!colour) return refused(`"${text}" is no colour: write it like BU/WH or blue/white`);
  return change({ lead: { area_mm2: "unknown", ...lead, colour } });
}

function commitWire(harness: Harness, wire: WireId, what: "label" | "colour", text: string): Edit | Refused {
  if (what === "label") {
    const label = text === harness.wires[wire]?.designation ? "" : text;
    return { kind: "change-wire", wire, changes: { label } };
  }
  const colour = text === "" ? null : readColour(text);
  if (text !== "" && !colour) return refused(`"${text}" is no colour: write it like BU/WH or blue/white`);
  return { kind: "change-wire", wire, changes: { colour } };
}

/** The function that a text names, by its own name or a word that charts use for it; `null` for neither. */
export function functionFor(text: string): string | null {
  const word = text.trim().toLowerCase().replace(/\s+/g, " ");
  if (word === "") return "unknown";
  const found =
    FUNCTIONS.find((item) => item.name.toLowerCase() === word || item.id === word) ??
    FUNCTIONS.find((item) => item.synonyms.includes(word));
  return found?.id ?? null;
}
