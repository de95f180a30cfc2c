import { COLOUR_NAMES } from "../../catalogue/colours.ts";
import { nearestAwg } from "../../catalogue/conductors.ts";
import { nameContact } from "../../catalogue/describe.ts";
import { functionOf } from "../../catalogue/functions.ts";
import type { Cable, End, Harness, Settings, Wire, WireId } from "../../graph/harness.ts";
import type { Circuit, Traced } from "../../graph/trace.ts";
import { fold } from "../find/fold.ts";

export const COLUMN_IDS = [
  "number",
  "label",
  "from",
  "to",
  "function",
  "base",
  "tracer",
  "size",
  "length",
  "cable",
  "note",
] as const;
export type ColumnId = (typeof COLUMN_IDS)[number];

export type Column = {
  readonly id: ColumnId;
  readonly width: number;
  /** A derived column is read, not written. */
  readonly derived?: true;
};

export const COLUMNS: readonly Column[] = [
  { id: "number", width: 72 },
  { id: "label", width: 96 },
  { id: "from", width: 112 },
  { id: "to", width: 112 },
  { id: "function", width: 208, derived: true },
  { id: "base", width: 80 },
  { id: "tracer", width: 80 },
  { id: "size", width: 80 },
  { id: "length", width: 80 },
  { id: "cable", width: 80 },
  { id: "note", width: 240 },
];

const NAMES: Readonly<Record<ColumnId, string>> = {
  number: "Wire",
  label: "Label",
  from: "From",
  to: "To",
  function: "Function",
  base: "Base",
  tracer: "Tracer",
  size: "Size",
  length: "Length m",
  cable: "Cable",
  note: "Note",
};

export function columnName(id: ColumnId, sizes: Settings["sizes"]): string {
  if (id === "size") return sizes === "awg" ? "Size AWG" : "Size mm²";
  return NAMES[id];
}

/** What cells are read from: the harness, its circuits, and which cable a wire is in. */
export type Sheet = {
  readonly harness: Harness;
  readonly traced: Traced;
  readonly cableOf: ReadonlyMap<WireId, Cable>;
};

export function sheetOf(harness: Harness, traced: Traced): Sheet {
  const cableOf = new Map<WireId, Cable>();
  for (const cable of Object.values(harness.cables)) {
    for (const wire of cable.wires) cableOf.set(wire, cable);
    if (cable.shield) cableOf.set(cable.shield, cable);
  }
  return { harness, traced, cableOf };
}

/** A cell as it is shown, copied and sorted. */
export function cellText(sheet: Sheet, wire: Wire, column: ColumnId): string {
  const { harness } = sheet;
  switch (column) {
    case "number":
      return wire.designation;
    case "label":
      return wire.label;
    case "from":
      return endText(harness, wire.ends[0]);
    case "to":
      return endText(harness, wire.ends[1]);
    case "function":
      return functionWords(sheet, sheet.traced.circuitOfWire(wire.id));
    case "base":
      return wire.colour?.base ?? "";
    case "tracer":
      return wire.colour?.tracer ?? "";
    case "size":
      return sizeFigure(wire.area_mm2, harness.settings.sizes);
    case "length":
      return wire.length_m === "unknown" ? "" : String(wire.length_m);
    case "cable":
      return sheet.cableOf.get(wire.id)?.designation ?? "";
    case "note":
      return wire.note;
  }
}

function endText(harness: Harness, end: End): string {
  return end === "loose" ? "loose" : nameContact(harness, end);
}

/** The figure alone: its unit stands in the column's head. */
export function sizeFigure(area_mm2: Wire["area_mm2"], sizes: Settings["sizes"]): string {
  if (area_mm2 === "unknown") return "";
  return sizes === "awg" ? nearestAwg(area_mm2) : String(Number(area_mm2.toPrecision(3)));
}

const remembered = new WeakMap<Circuit, string>();

/** What a circuit is for: the functions that its contacts state, each once; the chart's words if there is none. */
function functionWords({ traced }: Sheet, circuit: Circuit | undefined): string {
  if (!circuit) return "";
  const known = remembered.get(circuit);
  if (known !== undefined) return known;
  const names = new Set<string>();
  const texts = new Set<string>();
  for (const key of circuit.contacts) {
    const contact = traced.contact(key);
    if (!contact) continue;
    if (contact.function !== "unknown" && contact.function !== "not-used") {
      names.add(functionOf(contact.function).name);
    } else if (contact.cavity?.text) texts.add(contact.cavity.text);
  }
  const words = [...(names.size ? names : texts)];
  const text = words.length > 3 ? `${words.slice(0, 3).join(" + ")} + …` : words.join(" + ");
  remembered.set(circuit, text);
  return text;
}

/** The word for a colour cell: letters say little to a newcomer. */
export function colourTitle(code: string): string {
  return code in COLOUR_NAMES ? COLOUR_NAMES[code as keyof typeof COLOUR_NAMES] : "";
}

export type Sort = { readonly column: ColumnId; readonly down: boolean } | null;

const collator = new Intl.Collator("en", { numeric: true, sensitivity: "base" });

/** The wires to show: those that hold every word of the filter in some cell, in order; empty cells come last. */
export function arrangeRows(sheet: Sheet, filter: string, sort: Sort): readonly WireId[] {
  let wires: readonly Wire[] = Object.values(sheet.harness.wires);
  const words = fold(filter).split(/\s+/).filter(Boolean);
  if (words.length) {
    wires = wires.filter((wire) => {
      const line = fold(COLUMN_IDS.map((column) => cellText(sheet, wire, column)).join("\t"));
      const colours = wire.colour
        ? `${colourTitle(wire.colour.base)} ${colourTitle(wire.colour.tracer ?? "")}`
        : "";
      return words.every((word) => line.includes(word) || colours.includes(word));
    });
  }
  if (sort) {
    const rows = wires.map((wire) => ({ wire, text: cellText(sheet, wire, sort.column) }));
    rows.sort((a, b) => {
      if (a.text === "" || b.text === "") return Number(a.text === "") - Number(b.text === "");
      const order = collator.compare(a.text, b.text);
      return sort.down ? -order : order;
    });
    wires = rows.map(({ wire }) => wire);
  }
  return wires.map((wire) => wire.id);
}

/** The next sort when a column's head is pressed: up, down, as drawn. */
export function nextSort(sort: Sort, column: ColumnId): Sort {
  if (sort?.column !== column) return { column, down: false };
  return sort.down ? null : { column, down: true };
}
