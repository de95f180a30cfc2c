import { findContact, nameContact } from "../../catalogue/describe.ts";
import { refused } from "../../graph/edits/edit.ts";
import type { Harness, Wire } from "../../graph/harness.ts";
import { readLength } from "../table/write-cells.ts";
import { choiceField, designationField, type Field, lineField, noteField, sizeField } from "./fields.ts";

export const INSULATIONS = [
  "unknown",
  "thin-wall-85",
  "thin-wall-105",
  "cross-linked-125",
  "silicone",
  "other",
] as const;

const INSULATION_NAMES = {
  "thin-wall-85": "thin wall, to 85 °C",
  "thin-wall-105": "thin wall, to 105 °C",
  "cross-linked-125": "cross-linked, to 125 °C",
} as const;

export const METALS = ["unknown", "copper", "tinned-copper", "cca-15", "cca-10"] as const;

export const METAL_NAMES = {
  "cca-15": "copper-clad aluminium, 15 % copper",
  "cca-10": "copper-clad aluminium, 10 % copper",
} as const;

/** The fields of a wire but its colours, which have pickers. */
export function wireFields(harness: Harness, wire: Wire): readonly Field[] {
  const taken = new Set(Object.values(harness.wires).map((other) => other.designation));
  return [
    { ...designationField(wire.designation, taken), name: "Number" },
    lineField("label", "Printed on its markers", wire.label, wire.designation),
    endField(harness, wire, 0),
    endField(harness, wire, 1),
    ...materialFields(harness, wire),
    ...metalFields(wire),
    noteField(wire.note),
  ];
}

/** What several wires may have in common. */
export function materialFields(
  harness: Harness,
  wire: Pick<Wire, "area_mm2" | "length_m" | "insulation">,
): readonly Field[] {
  return [
    sizeField("area_mm2", wire.area_mm2, harness.settings.sizes),
    lengthField(wire.length_m),
    choiceField("insulation", "Insulation", wire.insulation, INSULATIONS, INSULATION_NAMES),
  ];
}

/** What the conductor is made of, and of how many strands. */
export function metalFields(wire: Pick<Wire, "material" | "strands">): readonly Field[] {
  return [
    {
      ...choiceField("material", "Metal", wire.material, METALS, METAL_NAMES),
      help: "Copper-clad aluminium carries less than copper of its size and breaks where it is bent. A scraped end that shows silver is tinned, or clad.",
      more: true,
    },
    {
      ...choiceField("strands", "Conductor", wire.strands, ["stranded", "solid", "unknown"]),
      help: "A vehicle needs stranded wire. The single thick core of house wire breaks where it shakes.",
      more: true,
    },
  ];
}

function endField(harness: Harness, wire: Wire, index: 0 | 1): Field {
  const end = wire.ends[index];
  return {
    key: "ends",
    name: index === 0 ? "From" : "To",
    look: "line",
    text: end === "loose" ? "loose" : nameContact(harness, end),
    read: (typed) => {
      const text = typed.trim();
      const found =
        text === "" || text.toLowerCase() === "loose"
          ? "loose"
          : (findContact(harness, text) ?? findContact(harness, text.toUpperCase()));
      if (!found) return refused(`There is no contact ${text}. Write one like X1.4, or loose.`);
      return { ok: true, value: index === 0 ? [found, wire.ends[1]] : [wire.ends[0], found] };
    },
  };
}

export function lengthField(length_m: Wire["length_m"]): Field {
  return {
    key: "length_m",
    name: "Length",
    look: "line",
    unit: "m",
    text: length_m === "unknown" ? "" : String(length_m),
    hint: "not known",
    read: (typed) => {
      if (typed.trim() === "") return { ok: true, value: "unknown" };
      const read = readLength(typed);
      return read === null
        ? refused(`"${typed}" is not a length. Write metres, like 0.45, or 45 cm.`)
        : { ok: true, value: read };
    },
  };
}
