import { writeColour } from "../../catalogue/colours.ts";
import { writeSize } from "../../catalogue/conductors.ts";
import type { Wire } from "../../graph/harness.ts";
import { compareNames } from "../../rules/words.ts";
import { cablesByWire } from "../cable-drawing.ts";
import { type Cell, cell, column, strong, type Table, type TableSource } from "./table.ts";
import { Whither } from "./whither.ts";

const INSULATION: Readonly<Record<Wire["insulation"], string>> = {
  "thin-wall-85": "thin wall 85 °C",
  "thin-wall-105": "thin wall 105 °C",
  "cross-linked-125": "cross-linked 125 °C",
  silicone: "silicone",
  other: "other",
  unknown: "",
};

const CABLE_WORDS = {
  "twisted-pair": "twisted",
  shielded: "shielded",
  "shielded-pair": "shielded pair",
  coax: "coax",
  multicore: "multicore",
} as const;

/** A lead's colour as a cell: swatch and letters. */
export function colourCell(colour: Wire["colour"]): Cell {
  return { text: writeColour(colour), swatch: colour };
}

export function writeLength(length_m: Wire["length_m"]): string {
  return length_m === "unknown" ? "" : `${Number(length_m.toFixed(3))} m`;
}

/** Every wire, by designation. */
export function wireTable(source: TableSource): Table {
  const { harness } = source;
  const whither = new Whither(source);
  const cables = cablesByWire(harness);
  const wires = Object.values(harness.wires).sort((a, b) => compareNames(a.designation, b.designation));
  return {
    id: "wires",
    title: "Wire table",
    remark: "",
    empty: "No wires yet.",
    columns: [
      column("wire", "Wire", 12),
      column("from", "From", 14),
      column("to", "To", 14),
      column("colour", "Colour", 10),
      column("size", "Size", 9),
      column("length", "Length", 9),
      column("function", "Function", 24),
      column("insulation", "Insulation", 18),
      column("cable", "Cable", 16),
      column("runs", "Runs", 14),
      column("label", "Label", 18),
      column("note", "Note", 40),
    ],
    rows: wires.map((wire) => {
      const cable = cables.get(wire.id);
      return [
        strong(wire.designation),
        cell(whither.nameOfEnd(wire.ends[0])),
        cell(whither.nameOfEnd(wire.ends[1])),
        colourCell(wire.colour),
        cell(writeSize(wire.area_mm2, harness.settings.sizes)),
        cell(writeLength(wire.length_m)),
        cell(whither.functionOfWire(wire)),
        cell(INSULATION[wire.insulation]),
        cell(cable ? `${cable.designation} ${CABLE_WORDS[cable.kind]}` : ""),
        cell(wire.runs.map((id) => harness.runs[id]?.designation ?? id).join(", ")),
        cell(wire.label),
        cell(wire.note),
      ];
    }),
  };
}
