import { readColour, writeColour } from "../../catalogue/colours.ts";
import { type Refused, refused } from "../../graph/edits/edit.ts";
import type { Cavity, Connector, Module, Settings } from "../../graph/harness.ts";
import { faceRows, makeCavity } from "../../graph/make.ts";
import { sizeFigure } from "../table/table-model.ts";
import { choiceField, type Field, figureField, functionField, lineField, sizeField } from "./fields.ts";

/** The fields of one cavity. The first four are in the table; the rest open under it. */
export function cavityFields(
  part: Connector | Module,
  index: number,
  sizes: Settings["sizes"],
): { readonly row: readonly Field[]; readonly more: readonly Field[] } {
  const cavity = part.cavities[index]!;
  const labels = new Set(part.cavities.map((one) => one.label));
  const lead = cavity.lead;
  return {
    row: [
      {
        ...lineField("label", "Cavity", cavity.label),
        read: (typed) => {
          const label = typed.trim();
          if (label === "") return refused("A cavity needs a label.");
          if (label !== cavity.label && labels.has(label))
            return refused(`There is a cavity ${label} already.`);
          return { ok: true, value: label };
        },
      },
      functionField("function", "Function", cavity.function),
      leadColourField(cavity),
      {
        ...sizeField("lead", lead?.area_mm2 ?? "unknown", sizes),
        // The row is narrow: the figure alone, in the harness's own unit.
        text: sizeFigure(lead?.area_mm2 ?? "unknown", sizes),
        hint: "",
        read: (typed) => {
          const read = sizeField("lead", "unknown", sizes).read(typed);
          if (!read.ok) return read;
          return { ok: true, value: leadWith(cavity, { area_mm2: read.value as number | "unknown" }) };
        },
      },
    ],
    more: [
      lineField("text", "Words of the chart", cavity.text),
      choiceField("use", "Use", cavity.use, ["expected", "optional", "spare", "plugged"], {
        plugged: "closed with a cavity plug",
        spare: "spare: stays unused",
      }),
      choiceField("direction", "Direction", cavity.direction, ["unknown", "gives", "takes", "both", "none"], {
        unknown: "as its function has it",
      }),
      figureField("current_A", "Current", cavity.current_A, "A", { most: 10_000 }),
      fuseField(cavity),
      ...signalFields(cavity),
    ],
  };
}

function leadWith(cavity: Cavity, changes: Partial<NonNullable<Cavity["lead"]>>): Cavity["lead"] {
  const lead = { colour: null, area_mm2: "unknown" as const, ...cavity.lead, ...changes };
  return lead.colour === null && lead.area_mm2 === "unknown" ? null : lead;
}

function leadColourField(cavity: Cavity): Field {
  return {
    ...lineField("lead", "Lead colour", writeColour(cavity.lead?.colour ?? null)),
    read: (typed) => {
      if (typed.trim() === "") return { ok: true, value: leadWith(cavity, { colour: null }) };
      const colour = readColour(typed);
      if (!colour) return refused(`"${typed}" is not a colour. Write it like BU/WH or blue/white.`);
      return { ok: true, value: leadWith(cavity, { colour }) };
    },
  };
}

/** How it gives is asked of what may give, what makes it act of what may take; what is stated stays in sight. */
function signalFields({ direction, gives, actsOn }: Cavity): readonly Field[] {
  const fields: Field[] = [];
  if (gives !== "unknown" || (direction !== "takes" && direction !== "none"))
    fields.push({
      ...choiceField("gives", "Gives", gives, ["plain", "pulsed", "watched", "unknown"], {
        plain: "plain volts",
        pulsed: "in pulses (dimmed)",
        watched: "watched by a controller",
      }),
      help: "A controller may dim a lamp by cutting its feed into pulses, or watch the current and report a lamp that is missing. What is joined to such a lead needs a relay or an interface.",
    });
  if (actsOn !== "unknown" || (direction !== "gives" && direction !== "none"))
    fields.push({
      ...choiceField("actsOn", "Acts on", actsOn, ["volts", "ground", "unknown"], {
        volts: "battery volts",
        ground: "being grounded",
      }),
      help: "What makes an input act: battery volts on its lead, or its lead joined to ground.",
    });
  return fields;
}

/** The fuse on the far side: a figure, "none", or not known. */
function fuseField(cavity: Cavity): Field {
  const figure = figureField("fuse_A", "Fuse on the far side", "unknown", "A", { most: 10_000 });
  return {
    ...figure,
    text: cavity.fuse_A === null ? "none" : cavity.fuse_A === "unknown" ? "" : String(cavity.fuse_A),
    hint: "not known, or none",
    read: (typed) => (/^(none|no)$/i.test(typed.trim()) ? { ok: true, value: null } : figure.read(typed)),
  };
}

/** The changes that give a housing another number of cavities. Those past the end go; their wires hang loose. */
export function countChanges(
  part: Connector | Module,
  text: string,
): { readonly ok: true; readonly value: Readonly<Record<string, unknown>> } | Refused {
  const count = Number(text.trim());
  if (!Number.isInteger(count) || count < 0 || count > 2000) {
    return refused("Write a whole number of cavities, up to 2000.");
  }
  const labels = new Set(part.cavities.map((cavity) => cavity.label));
  const cavities = part.cavities.slice(0, count);
  let next = part.cavities.length + 1;
  while (cavities.length < count) {
    while (labels.has(String(next))) next++;
    labels.add(String(next));
    cavities.push(makeCavity(String(next)));
  }
  if (part.kind === "module") return { ok: true, value: { cavities } };
  return { ok: true, value: { cavities, rows: faceRows(count, part.rows.length || 1) } };
}

/** The changes that set a housing's cavities out in another number of rows. */
export function rowChanges(
  part: Connector,
  text: string,
): { readonly ok: true; readonly value: Readonly<Record<string, unknown>> } | Refused {
  const rows = Number(text.trim());
  if (!Number.isInteger(rows) || rows < 1 || rows > 60)
    return refused("Write a whole number of rows, 1 to 60.");
  return { ok: true, value: { rows: faceRows(part.cavities.length, rows) } };
}
