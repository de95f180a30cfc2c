import { readColour, writeColour } from "../../catalogue/colours.ts";
import { readSize } from "../../catalogue/conductors.ts";
import { findContact } from "../../catalogue/describe.ts";
import { sameEnd } from "../../graph/contacts.ts";
import { type Edit, group, type Refused, refused } from "../../graph/edits/edit.ts";
import type { Cable, CableId, End, Harness, Wire, WireId } from "../../graph/harness.ts";
import { makeWire, Names } from "../../graph/make.ts";
import { COLUMNS, type ColumnId, cellText, columnName, type Sheet } from "./table-model.ts";

type WireChanges = Partial<Omit<Wire, "id">>;

/** A value that could not be taken: it stays in its cell, with why, until it is put right. */
export type BadCell = {
  readonly wire: WireId;
  readonly column: ColumnId;
  readonly text: string;
  readonly why: string;
};

/** What a cell's text would change; nothing where it says what is there already. */
type Read = { readonly ok: true; readonly changes: WireChanges; readonly cable?: CableId | null } | Refused;

/** Texts for a block of cells, row by row. */
export type Block = readonly (readonly string[])[];

/**
 * Writes a block of texts into cells as one step. What can be read is taken; what cannot is handed back with why.
 * Rows past the last one become new wires.
 * @param rows the wires as they are shown, in order
 * @param name what the step is called
 * @returns the edit (`null` where nothing changes), the cells that were refused, and the new wires
 */
export function writeCells(
  sheet: Sheet,
  rows: readonly WireId[],
  top: number,
  left: number,
  block: Block,
  name: string,
): { readonly edit: Edit | null; readonly bad: readonly BadCell[]; readonly added: readonly WireId[] } {
  const draft = new Draft(sheet);
  const bad: BadCell[] = [];
  const added: WireId[] = [];
  for (const [index, line] of block.entries()) {
    let id = rows[top + index];
    if (id === undefined) {
      if (line.every((text) => text.trim() === "")) continue;
      id = draft.addWire();
      added.push(id);
    }
    for (const [offset, text] of line.entries()) {
      const column = COLUMNS[left + offset];
      if (!column || column.derived) continue;
      const read = draft.write(id, column.id, text);
      if (!read.ok) bad.push({ wire: id, column: column.id, text, why: read.why });
    }
  }
  return { edit: draft.edit(name), bad, added };
}

/** Writes one cell. */
export function writeCell(sheet: Sheet, wire: WireId, column: ColumnId, text: string): Edit | null | Refused {
  const index = COLUMNS.findIndex((one) => one.id === column);
  const name = `change ${columnName(column, sheet.harness.settings.sizes).toLowerCase()}`;
  const { edit, bad } = writeCells(sheet, [wire], 0, index, [[text]], name);
  return bad[0] ? refused(bad[0].why) : edit;
}

/** Wires and cables as they will stand, while a block is being read: a later cell sees what an earlier one did. */
class Draft {
  private readonly wires = new Map<WireId, Wire>();
  private readonly changes = new Map<WireId, WireChanges>();
  private readonly added = new Set<WireId>();
  private readonly cables = new Map<CableId, Cable>();
  private readonly names: Names;
  private numbers: Set<string> | null = null;
  private readonly harness: Harness;

  constructor(private readonly sheet: Sheet) {
    this.harness = sheet.harness;
    this.names = new Names(sheet.harness);
  }

  addWire(): WireId {
    const wire = makeWire(this.names.wire(), this.names.wireDesignation(), ["loose", "loose"]);
    this.wires.set(wire.id, wire);
    this.added.add(wire.id);
    return wire.id;
  }

  write(id: WireId, column: ColumnId, text: string): Read {
    const wire = this.wires.get(id) ?? this.harness.wires[id];
    if (!wire) return refused("that wire is no longer there");
    // A figure is shown rounded: written back as it was shown, it must not lose what is not shown.
    const before = this.harness.wires[id];
    const rounded = column === "size" || column === "length" || !this.changes.has(id);
    if (before && rounded && cellText(this.sheet, before, column) === text.trim()) {
      return { ok: true, changes: {} };
    }
    const read = this.read(wire, column, text.trim());
    if (!read.ok) return read;
    if (column === "cable" && read.cable !== undefined) this.moveToCable(id, read.cable);
    if (Object.keys(read.changes).length === 0) return read;
    if (read.changes.designation !== undefined) {
      this.taken().delete(wire.designation);
      this.taken().add(read.changes.designation);
    }
    this.wires.set(id, { ...wire, ...read.changes });
    if (!this.added.has(id)) this.changes.set(id, { ...this.changes.get(id), ...read.changes });
    return read;
  }

  edit(name: string): Edit | null {
    const edits: Edit[] = [];
    for (const id of this.added) edits.push({ kind: "add-wire", wire: this.wires.get(id)! });
    for (const [wire, changes] of this.changes) edits.push({ kind: "change-wire", wire, changes });
    for (const cable of this.cables.values()) {
      edits.push(
        cable.wires.length === 0 && !cable.shield
          ? { kind: "drop-entry", section: "cables", id: cable.id }
          : { kind: "put-entry", section: "cables", entry: cable },
      );
    }
    return edits.length ? group(name, edits) : null;
  }

  private taken(): Set<string> {
    this.numbers ??= new Set(Object.values(this.harness.wires).map((wire) => wire.designation));
    return this.numbers;
  }

  private read(wire: Wire, column: ColumnId, text: string): Read {
    switch (column) {
      case "number":
        if (text === "") return refused("A wire needs a number.");
        if (text !== wire.designation && this.taken().has(text)) {
          return refused(`Another wire is called ${text}.`);
        }
        return change({ designation: text.slice(0, 400) });
      case "label":
        return change({ label: text.slice(0, 400) });
      case "note":
        return change({ note: text.slice(0, 8000) });
      case "from":
      case "to":
        return this.readEnd(wire, column === "from" ? 0 : 1, text);
      case "base":
        return readBase(wire, text);
      case "tracer":
        return readTracer(wire, text);
      case "size":
        return this.readArea(text);
      case "length":
        return readLengthCell(text);
      case "cable":
        return this.readCable(text);
      case "function":
        return refused("The function follows from what the wire joins.");
    }
  }

  private readEnd(wire: Wire, index: 0 | 1, text: string): Read {
    const end: End | null =
      text === "" || text.toLowerCase() === "loose"
        ? "loose"
        : (findContact(this.harness, text) ?? findContact(this.harness, text.toUpperCase()));
    if (!end) return refused(`There is no contact ${text}. Write one like X1.4, or loose.`);
    const other = wire.ends[index === 0 ? 1 : 0];
    if (end !== "loose" && sameEnd(end, other)) return refused("Both ends would be on one contact.");
    return change({ ends: index === 0 ? [end, other] : [other, end] });
  }

  private readArea(text: string): Read {
    if (text === "") return change({ area_mm2: "unknown" });
    const { sizes } = this.harness.settings;
    const area_mm2 = readSize(text, sizes);
    if (area_mm2 === null) {
      const example = sizes === "awg" ? "18 or 0.75 mm2" : "0.75 or 18 AWG";
      return refused(`"${text}" is not a size. Write one like ${example}.`);
    }
    return change({ area_mm2 });
  }

  private readCable(text: string): Read {
    if (text === "") return { ok: true, changes: {}, cable: null };
    const cable = Object.values(this.harness.cables).find((one) => one.designation === text);
    if (!cable) {
      return refused(`There is no cable ${text}. Select its wires and make one in the details.`);
    }
    return { ok: true, changes: {}, cable: cable.id };
  }

  private moveToCable(wire: WireId, to: CableId | null): void {
    for (const known of Object.values(this.harness.cables)) {
      const cable = this.cables.get(known.id) ?? known;
      const isIn = cable.wires.includes(wire);
      if (cable.id === to) {
        if (!isIn && cable.shield !== wire) {
          this.cables.set(cable.id, { ...cable, wires: [...cable.wires, wire] });
        }
      } else if (isIn || cable.shield === wire) {
        this.cables.set(cable.id, {
          ...cable,
          wires: cable.wires.filter((id) => id !== wire),
          shield: cable.shield === wire ? null : cable.shield,
        });
      }
    }
  }
}

const change = (changes: WireChanges): Read => ({ ok: true, changes });

function readBase(wire: Wire, text: string): Read {
  if (text === "") return change({ colour: null });
  const colour = readColour(text);
  if (!colour) return refused(notAColour(text));
  // "BU/WH" in the base cell states both; a base alone leaves the tracer as it is.
  const tracer = colour.tracer ?? wire.colour?.tracer ?? null;
  return change({ colour: { base: colour.base, tracer } });
}

function readTracer(wire: Wire, text: string): Read {
  if (text === "") return change(wire.colour ? { colour: { ...wire.colour, tracer: null } } : {});
  const colour = readColour(text);
  if (!colour || colour.tracer) return refused(notAColour(text));
  if (!wire.colour) return refused("State the base colour first.");
  return change({ colour: { ...wire.colour, tracer: colour.base } });
}

function notAColour(text: string): string {
  const shown = writeColour(readColour(text));
  if (shown) return `${shown} is two colours. Write one here.`;
  return `"${text}" is not a colour. Write letters like BU, or a word like blue.`;
}

function readLengthCell(text: string): Read {
  if (text === "") return change({ length_m: "unknown" });
  const length_m = readLength(text);
  if (length_m === null) return refused(`"${text}" is not a length. Write metres, like 0.45, or 45 cm.`);
  return change({ length_m });
}

/** Reads a length as a person types it: "0.45", "0,45 m", "45 cm", "450 mm", "18 in". @returns metres or `null` */
export function readLength(text: string): number | null {
  const match = /^(\d*[.,]?\d+)\s*(mm|cm|m|in|″|"|ft)?$/i.exec(text.trim());
  if (!match) return null;
  const value = Number(match[1]!.replace(",", "."));
  const factors: Readonly<Record<string, number>> = { mm: 0.001, cm: 0.01, m: 1, in: 0.0254, ft: 0.3048 };
  const unit = (match[2] ?? "m").toLowerCase().replace(/[″"]/, "in");
  const length_m = Number((value * (factors[unit] ?? 1)).toPrecision(12));
  return Number.isFinite(length_m) && length_m <= 1000 ? length_m : null;
}
