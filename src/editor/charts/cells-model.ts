import { readColour, writeColour } from "../../catalogue/colours.ts";
import { readSize, writeSize } from "../../catalogue/conductors.ts";
import { FUNCTIONS, functionOf } from "../../catalogue/functions.ts";
import { type Refused, refused } from "../../graph/edits/edit.ts";
import type { Direction } from "../../graph/harness.ts";
import type { Lead } from "../../match/chart.ts";
import type { LeadChanges } from "../../match/review/mend.ts";
import { readFunction } from "../../match/words/read-function.ts";

/** One cell of a row that was read: what stands in it, and how what is typed there is taken. */
export type RowCell = {
  readonly key: string;
  readonly name: string;
  readonly text: string;
  readonly hint: string;
  readonly read: (typed: string) => { readonly ok: true; readonly value: LeadChanges } | Refused;
};

type Sizes = "metric" | "awg";
const took = (value: LeadChanges) => ({ ok: true, value }) as const;

export const DIRECTIONS: readonly (readonly [Direction, string])[] = [
  ["unknown", "as usual for its function"],
  ["gives", "gives"],
  ["takes", "takes"],
  ["both", "gives and takes"],
  ["none", "neither"],
];

export function labelCell(lead: Lead): RowCell {
  return {
    key: "label",
    name: `Cavity of ${lead.name}`,
    text: lead.label ?? "",
    hint: "–",
    read: (typed) => took({ label: typed.trim() === "" ? null : typed.trim().slice(0, 400) }),
  };
}

export function functionCell(lead: Lead): RowCell {
  const [first] = lead.reading.candidates;
  const isSettled = lead.reading.certain && first !== undefined;
  return {
    key: "function",
    name: `Function of ${lead.name}`,
    text: lead.isUnused ? "not used" : isSettled ? functionOf(first.function).name : "",
    hint: first ? "more than one fits" : "not known",
    read: (typed) => {
      if (typed.trim() === "") return took({ reading: { candidates: [], certain: false }, isUnused: false });
      const id = functionNamed(typed);
      if (id === null)
        return refused(`"${typed.trim()}" fits no function, or more than one. Choose one from the list.`);
      const isUnused = id === "not-used";
      const candidates = isUnused ? [] : [{ function: id, share: 1 }];
      return took({ isUnused, reading: { candidates, certain: true } });
    },
  };
}

const byName = new Map(FUNCTIONS.map(({ id, name }) => [name.toLowerCase(), id]));

/** The function that a typed text means: one of the list by its name, or the one that its words fit. */
export function functionNamed(typed: string): string | null {
  const exact = byName.get(typed.trim().toLowerCase());
  if (exact !== undefined && exact !== "unknown") return exact;
  const { candidates, certain } = readFunction(typed);
  return certain && candidates[0] ? candidates[0].function : null;
}

export function colourCell(lead: Lead): RowCell {
  return {
    key: "colour",
    name: `Colour of ${lead.name}`,
    text: writeColour(lead.colour),
    hint: lead.colourText || "none",
    read: (typed) => {
      if (typed.trim() === "") return took({ colour: null });
      const colour = readColour(typed);
      return colour
        ? took({ colour })
        : refused(`"${typed.trim()}" is not a colour. Write it like BU/WH or blue/white.`);
    },
  };
}

export function sizeCell(lead: Lead, sizes: Sizes): RowCell {
  return {
    key: "size",
    name: `Size of ${lead.name}`,
    text: lead.area_mm2 === null ? "" : writeSize(lead.area_mm2, sizes),
    hint: sizes === "awg" ? "AWG" : "mm²",
    read: (typed) => {
      if (typed.trim() === "") return took({ area_mm2: null });
      const area_mm2 = readSize(typed, sizes);
      return area_mm2 === null
        ? refused(`"${typed.trim()}" is not a size. Write one like 0.75 mm² or 18 AWG.`)
        : took({ area_mm2 });
    },
  };
}

export function wordsCell(lead: Lead): RowCell {
  return {
    key: "text",
    name: `Words of the chart for ${lead.name}`,
    text: lead.text,
    hint: "",
    read: (typed) => took({ text: typed.trim().slice(0, 400) }),
  };
}

export function ampereCell(lead: Lead, key: "current_A" | "fuse_A", words: string): RowCell {
  const figure = lead[key];
  return {
    key,
    name: `${words} of ${lead.name}, amperes`,
    text: figure === null ? "" : String(figure),
    hint: "not stated",
    read: (typed) => {
      const plain = typed.trim().replace(",", ".").replace(/\s*a$/i, "");
      if (plain === "") return took({ [key]: null });
      const amperes = Number(plain);
      return Number.isFinite(amperes) && amperes >= 0 && amperes <= 10_000
        ? took({ [key]: amperes })
        : refused(`"${typed.trim()}" is not a figure in amperes.`);
    },
  };
}

/** What a row says besides, in a line: direction, current, fuse. */
export function sayRest({ direction, current_A, fuse_A }: Lead): string {
  return [
    direction === "unknown" ? "" : direction === "both" ? "gives and takes" : direction,
    current_A === null ? "" : `${current_A} A`,
    fuse_A === null ? "" : `fuse ${fuse_A} A`,
  ]
    .filter((word) => word !== "" && word !== "none")
    .join(", ");
}
