import { writeColour } from "../../catalogue/colours.ts";
import { writeSize } from "../../catalogue/conductors.ts";
import { functionOf } from "../../catalogue/functions.ts";
import { contactKey, contactsOf } from "../../graph/contacts.ts";
import type { Cavity, Connector, Direction, Module } from "../../graph/harness.ts";
import { differsFromWanted } from "../part-drawing/switch-bank.ts";
import { type Cell, cell, column, strong, type Table, type TableSource } from "./table.ts";
import { Whither } from "./whither.ts";
import { colourCell } from "./wire-table.ts";

const DIRECTION_WORDS: Readonly<Record<Direction, string>> = {
  gives: "gives",
  takes: "takes",
  both: "both",
  none: "",
  unknown: "",
};

/** The cavities of a housing: lead, colour, function, the chart's own words, where it goes. */
export function connectorTable(
  source: TableSource,
  part: Connector | Module,
  whither = new Whither(source),
): Table {
  const { harness, traced } = source;
  return {
    id: `connector-${part.designation}`,
    title: [part.designation, part.name].filter((word) => word !== "").join("  "),
    remark: "",
    empty: "No cavities.",
    columns: [
      column("cavity", "Cavity", 8),
      column("colour", "Chart lead", 12),
      column("size", "Size", 9),
      column("function", "Function", 26),
      column("text", "Chart says", 26),
      column("direction", "Gives or takes", 10),
      column("wire", "Wire", 20),
      column("goes", "Goes to", 44),
      column("use", "Use", 10),
    ],
    rows: contactsOf(part).map((contact): Cell[] => {
      const { cavity } = contact;
      const wires = traced.wiresAt(contactKey(part.id, contact.number));
      return [
        strong(contact.label),
        cavity?.lead ? colourCell(cavity.lead.colour) : cell(""),
        cell(cavity?.lead ? writeSize(cavity.lead.area_mm2, harness.settings.sizes) : ""),
        cell(contact.function === "unknown" ? "" : functionOf(contact.function).name),
        cell(cavity?.text ?? ""),
        cell(DIRECTION_WORDS[contact.direction]),
        cell(wires.map((wire) => `${wire.designation} ${writeColour(wire.colour)}`.trim()).join(", ")),
        cell(whither.from({ part: part.id, contact: contact.number }) || emptyWords(cavity)),
        cell(cavity && cavity.use !== "expected" ? cavity.use : ""),
      ];
    }),
  };
}

function emptyWords(cavity: Cavity | null): string {
  if (cavity?.use === "plugged") return "cavity plug";
  return cavity?.lead ? "not joined" : "empty";
}

/** A module's configuration switches: how each stands, what its chart wants, what it means. */
export function switchTable(part: Module): Table {
  return {
    id: `switches-${part.designation}`,
    title: `${part.designation}  configuration switches`,
    remark: "",
    empty: "No configuration switches.",
    columns: [
      column("switch", "Switch", 8),
      column("position", "Set to", 10),
      column("wanted", "Chart wants", 14),
      column("meaning", "Meaning", 60),
      column("differs", "", 24),
    ],
    rows: part.switches.map((one) => [
      strong(one.label),
      cell(one.position === "unset" ? "not set" : one.position),
      cell(one.wanted === "unknown" ? "not looked up" : one.wanted),
      cell(one.meaning),
      cell(differsFromWanted(one) ? "differs from the chart" : ""),
    ]),
  };
}
