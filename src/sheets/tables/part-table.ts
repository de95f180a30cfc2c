import { writeColour } from "../../catalogue/colours.ts";
import { writeSize } from "../../catalogue/conductors.ts";
import { nameKind } from "../../catalogue/describe.ts";
import type { Fuse, Ground, Harness, Part } from "../../graph/harness.ts";
import { captionOf } from "../../layout/geometry/caption.ts";
import { compareNames } from "../../rules/words.ts";
import { CAPS, jointWords } from "../part-drawing/joint.ts";
import { type Cell, cell, column, strong, type Table, type TableSource } from "./table.ts";
import { partsInOrder } from "./whither.ts";

/** What has to be on the bench: parts alike on one row, wire by colour and size. */
export function partTable({ harness }: TableSource): Table {
  const groups = new Map<string, { part: Part; words: string; names: string[] }>();
  for (const part of partsInOrder(harness.parts)) {
    const words = describePart(part);
    const key = `${part.kind}\n${words}`;
    const known = groups.get(key);
    if (known) known.names.push(part.designation);
    else groups.set(key, { part, words, names: [part.designation] });
  }
  const rows: Cell[][] = [];
  for (const { part, words, names } of groups.values()) {
    rows.push([
      strong(String(rows.length + 1)),
      cell(String(names.length)),
      cell(nameKind(part.kind)),
      cell(words),
      cell(names.join(", ")),
    ]);
  }
  for (const row of wireStock(harness)) rows.push([strong(String(rows.length + 1)), ...row]);
  return {
    id: "parts",
    title: "Parts list",
    remark: "",
    empty: "No parts yet.",
    columns: [
      column("item", "Item", 6),
      column("quantity", "Quantity", 14),
      column("kind", "Part", 12),
      column("description", "Description", 50),
      column("designations", "Where", 50),
    ],
    rows,
  };
}

/** Each word once: a receiver that is called "receiver" is one all the same. */
const join = (...words: readonly string[]): string =>
  [...new Set(words)].filter((word) => word !== "").join(", ");
const known = (word: string): string => (word === "unknown" ? "" : word.replaceAll("-", " "));

const SERVES_WORDS: Readonly<Record<Ground["serves"], string>> = {
  "this-job": "this job's own point",
  vehicle: "a point of the vehicle's",
  "safety-system": "a point of a safety system",
  "battery-post": "the battery's minus post",
  unknown: "",
};

const HOLDER_WORDS: Readonly<Record<Fuse["holder"], string>> = {
  own: "in a holder of its own",
  "fuse-box": "in the vehicle's fuse box",
  tap: "in a fuse tap",
  unknown: "",
};

function describePart(part: Part): string {
  const value = captionOf(part).value.replace("? A", "rating not stated");
  switch (part.kind) {
    case "connector":
      return join(
        part.name,
        `${part.cavities.length}-way ${part.form === "housing" ? known(part.gender) || "housing" : known(part.form)}`,
        part.shell ? `shell ${part.shell}` : "",
        part.keying ? `keying ${part.keying}` : "",
        part.belongsTo.side,
      );
    case "module":
      return join(part.name, part.role === "other" ? "" : part.role, part.side);
    case "splice":
      return join(jointWords(part), part.name);
    case "cap":
      return join(CAPS[part.method].words, part.name);
    case "ground":
      return join("ring on a stud", part.where, known(part.surface), SERVES_WORDS[part.serves], part.name);
    case "fuse":
      return join(value, known(part.form), HOLDER_WORDS[part.holder], part.name);
    case "relay":
      return join(part.poles.replaceAll("-", " "), value, suppressionWords(part.suppression), part.name);
    default:
      return join(value, part.name);
  }
}

function suppressionWords(kind: "none" | "diode" | "resistor" | "unknown"): string {
  if (kind === "none") return "no suppression";
  return kind === "unknown" ? "" : `${kind} across the coil`;
}

/** Wire to have on the reel, by colour and size: pieces, and the length of those whose length is stated. */
function wireStock({ wires, settings }: Harness): Cell[][] {
  type Stock = { pieces: number; length_m: number; unstated: number; colour: string; names: string[] };
  const stock = new Map<string, Stock>();
  for (const wire of Object.values(wires)) {
    const colour = writeColour(wire.colour) || "colour not stated";
    const size = writeSize(wire.area_mm2, settings.sizes) || "size not stated";
    const key = `${colour}, ${size}`;
    const row = stock.get(key) ?? { pieces: 0, length_m: 0, unstated: 0, colour: key, names: [] };
    row.pieces++;
    if (wire.length_m === "unknown") row.unstated++;
    else row.length_m += wire.length_m;
    row.names.push(wire.designation);
    stock.set(key, row);
  }
  return [...stock.values()]
    .sort((a, b) => compareNames(a.colour, b.colour))
    .map((row) => [
      cell(`${row.pieces} ${row.pieces === 1 ? "piece" : "pieces"}`),
      cell("wire"),
      cell(join(row.colour, lengthWords(row))),
      cell(row.names.sort(compareNames).join(", ")),
    ]);
}

function lengthWords({ pieces, length_m, unstated }: { pieces: number; length_m: number; unstated: number }) {
  if (unstated === pieces) return "length not stated";
  const total = `${Number(length_m.toFixed(2))} m`;
  return unstated === 0 ? total : `${total} and ${unstated} of unstated length`;
}
