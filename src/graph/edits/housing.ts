import type { Cavity, Connector, Harness, PartId } from "../harness.ts";
import { faceRows, makeCavity } from "../make.ts";
import { type Edit, group, type Refused, refused } from "./edit.ts";

/** The rows of a face as they look from the other side: each row reads the other way. */
export function mirrored(rows: Connector["rows"]): number[][] {
  const columns = Math.max(0, ...rows.map((row) => row.length));
  return rows.map((row) => [...row, ...Array<number>(columns - row.length).fill(0)].reverse());
}

/** States the other view of a connector and mirrors its face, so that the cavities stay where they are. */
export function changeView(harness: Harness, id: PartId): Edit | Refused {
  const part = harness.parts[id];
  if (part?.kind !== "connector") return refused("only a connector is seen from a side");
  const view = part.view === "wire-side" ? "mating-face" : "wire-side";
  return group(`show ${part.designation} from the ${view.replace("-", " ")}`, [
    { kind: "change-part", part: id, changes: { view, rows: mirrored(part.rows) } },
  ]);
}

/**
 * Gives a connector or a module another number of cavities. New ones are numbered on; wires of removed ones
 * become loose. The face keeps what it shows; new cavities are added at the ends of its rows in turn.
 */
export function setCavityCount(harness: Harness, id: PartId, count: number): Edit | Refused {
  const part = harness.parts[id];
  if (part?.kind !== "connector" && part?.kind !== "module")
    return refused("only a connector or a module has cavities");
  if (!Number.isInteger(count) || count < 0 || count > 2000)
    return refused("a housing has a whole number of cavities, up to 2000");
  if (count === part.cavities.length) return refused(`${part.designation} has ${count} cavities already`);
  const taken = new Set(part.cavities.map((cavity) => cavity.label));
  const cavities = part.cavities.slice(0, count);
  for (let number = cavities.length + 1; cavities.length < count; number++) {
    if (!taken.has(String(number))) cavities.push(makeCavity(String(number)));
  }
  const changes: Record<string, unknown> = { cavities };
  if (part.kind === "connector") {
    const rows = part.rows.map((row) => row.map((number) => (number > count ? 0 : number)));
    const wanted = Array.from({ length: Math.max(0, count - part.cavities.length) }, (_, index) => index);
    for (const index of wanted) rows[index % rows.length]?.push(part.cavities.length + index + 1);
    const fits = rows.length > 0 && rows.every((row) => row.length <= 200);
    changes.rows = fits ? rows : faceRows(count, Math.max(1, Math.ceil(count / 200)));
  }
  return group(`give ${part.designation} ${count} cavities`, [{ kind: "change-part", part: id, changes }]);
}

/** Says of which box a connector is a receptacle; `null` takes it off its box again. */
export function assignReceptacle(harness: Harness, id: PartId, module: PartId | null): Edit | Refused {
  const part = harness.parts[id];
  if (part?.kind !== "connector") return refused("only a connector can be a receptacle of a module");
  const box = module === null ? null : harness.parts[module];
  if (module !== null && box?.kind !== "module") return refused("that is no module");
  if (part.belongsTo.module === module)
    return refused(box ? `${part.designation} is on ${box.designation} already` : "it is on no module");
  const side = box?.kind === "module" ? box.side : part.belongsTo.side;
  const name = box
    ? `put ${part.designation} on ${box.designation}`
    : `take ${part.designation} off its module`;
  return group(name, [
    { kind: "change-part", part: id, changes: { belongsTo: { ...part.belongsTo, side, module } } },
  ]);
}

/** What a pasted row says of one cavity; a field left out stays as it was. */
export type CavityRow = { readonly label?: string } & Partial<Omit<Cavity, "label">>;

/**
 * Writes rows into a connector's or a module's cavities: a row with a label goes to the cavity of that label,
 * one without to the next in order; rows past the last cavity add cavities.
 * @param from the contact number the first unlabelled row goes to
 */
export function writeRows(
  harness: Harness,
  id: PartId,
  rows: readonly CavityRow[],
  from = 1,
): Edit | Refused {
  const part = harness.parts[id];
  if (part?.kind !== "connector" && part?.kind !== "module")
    return refused("only a connector or a module has cavities");
  if (!rows.length) return refused("there is nothing in the rows");
  const cavities: Cavity[] = [...part.cavities];
  let next = from;
  for (const row of rows) {
    const named = row.label === undefined ? -1 : cavities.findIndex((cavity) => cavity.label === row.label);
    const index = named >= 0 ? named : row.label === undefined ? next - 1 : cavities.length;
    const old = cavities[index] ?? makeCavity(row.label ?? String(index + 1));
    cavities[index] = { ...old, ...row, label: row.label ?? old.label };
    next = index + 2;
  }
  const changes: Record<string, unknown> = { cavities };
  if (part.kind === "connector") {
    const shown = part.rows.flat().filter((number) => number > 0).length;
    if (shown !== cavities.length) changes.rows = faceRows(cavities.length, part.rows.length || 1);
  }
  return group(`fill ${part.designation} from rows`, [{ kind: "change-part", part: id, changes }]);
}
