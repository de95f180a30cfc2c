import type { End, Harness, Wire, WireId } from "../harness.ts";
import { type Edit, group, type Refused, refused, sayField } from "./edit.ts";

/** Exchanges the two ends of a wire, its path with them: what the table shows as "from" becomes "to". */
export function turnWire(harness: Harness, id: WireId): Edit | Refused {
  const wire = harness.wires[id];
  if (!wire) return refused(`there is no wire ${id}`);
  const ends: [End, End] = [wire.ends[1], wire.ends[0]];
  const edits: Edit[] = [{ kind: "change-wire", wire: id, changes: { ends } }];
  const path = harness.layout.paths[id];
  if (path && path.length % 2 === 0) {
    const turned = path.map((_, index) => path[path.length - 2 - index + 2 * (index % 2)]!);
    edits.push({ kind: "lay-out", places: {}, paths: { [id]: turned } });
  }
  return group(`turn ${wire.designation}`, edits);
}

/** The same change to many wires at once: a colour, a size, an insulation. Wires that have it already stay as they are. */
export function changeWires(
  harness: Harness,
  ids: readonly WireId[],
  changes: Partial<Omit<Wire, "id" | "ends" | "designation">>,
): Edit | Refused {
  if ("id" in changes || "ends" in changes || "designation" in changes)
    return refused("wires keep their own id, ends and number");
  const text = JSON.stringify(changes);
  const edits: Edit[] = [];
  for (const id of new Set(ids)) {
    const wire = harness.wires[id];
    if (!wire) return refused(`there is no wire ${id}`);
    const names = Object.keys(changes) as (keyof typeof changes)[];
    const now = JSON.stringify(Object.fromEntries(names.map((name) => [name, wire[name]])));
    if (now !== text) edits.push({ kind: "change-wire", wire: id, changes });
  }
  if (!edits.length) return refused("that changes nothing");
  const what = Object.keys(changes).map(sayField).join(", ");
  return group(`change ${what} of ${edits.length} ${edits.length === 1 ? "wire" : "wires"}`, edits);
}

/**
 * Numbers wires in the order given: W1, W2, … A number that a wire outside the order holds is passed over.
 * @param from the first number, from 1
 */
export function renumberWires(
  harness: Harness,
  order: readonly WireId[],
  from = 1,
  letters = "W",
): Edit | Refused {
  if (!Number.isSafeInteger(from) || from < 0) return refused("numbers start at a whole number");
  const chosen = new Set(order);
  const taken = new Set<string>();
  for (const wire of Object.values(harness.wires)) if (!chosen.has(wire.id)) taken.add(wire.designation);
  const edits: Edit[] = [];
  let number = from;
  for (const id of chosen) {
    const wire = harness.wires[id];
    if (!wire) return refused(`there is no wire ${id}`);
    while (taken.has(`${letters}${number}`)) number++;
    const designation = `${letters}${number++}`;
    if (designation !== wire.designation)
      edits.push({ kind: "change-wire", wire: id, changes: { designation } });
  }
  if (!edits.length) return refused("the wires are numbered so already");
  return group("renumber wires", edits);
}
