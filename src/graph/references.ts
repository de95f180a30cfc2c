import { contactsOf } from "./contacts.ts";
import type { Cable, End, Harness, Part, Wire } from "./harness.ts";

/** Something named that the harness does not have. */
export type Dangling = {
  readonly code: "dangling-end" | "dangling-reference";
  /** Within the entry: ["ends", 1]. */
  readonly path: readonly PropertyKey[];
  readonly found: string;
  readonly expected: string;
  readonly next: string;
};

type Known = Pick<Harness, "parts" | "wires" | "runs">;

/** Why a wire's end names nothing, or `null` where it is loose or on a contact that exists. */
export function danglingEnd(harness: Pick<Harness, "parts">, end: End, owner: string): Dangling | null {
  if (end === "loose") return null;
  const part = harness.parts[end.part];
  const next = `Correct it, or set that end of ${owner} to "loose".`;
  const wrong = { code: "dangling-end", path: [], next } as const;
  if (!part) return { ...wrong, found: `part "${end.part}"`, expected: "a part of this file" };
  const count = contactsOf(part).length;
  if (end.contact <= count) return null;
  const expected = count
    ? `1 to ${count}, the contacts of ${part.designation}`
    : `another part: ${part.designation} has no contacts`;
  return { ...wrong, found: `contact ${end.contact}`, expected };
}

/** What a wire names and the harness does not have: parts and contacts at its ends, runs. */
export function* danglingOfWire(harness: Known, wire: Wire): Generator<Dangling> {
  for (const [index, end] of wire.ends.entries()) {
    const problem = danglingEnd(harness, end, wire.designation);
    if (problem) yield { ...problem, path: ["ends", index] };
  }
  for (const [index, run] of wire.runs.entries()) {
    if (harness.runs[run]) continue;
    yield reference(["runs", index], `run "${run}"`, "a run of this file", "Remove it from the wire's runs.");
  }
}

/** What a cable names and the harness does not have. */
export function* danglingOfCable(harness: Known, cable: Cable): Generator<Dangling> {
  for (const [index, id] of cable.wires.entries()) {
    if (harness.wires[id]) continue;
    yield reference(["wires", index], `wire "${id}"`, "a wire of this file", "Remove it from the cable.");
  }
  if (cable.shield && !harness.wires[cable.shield]) {
    yield reference(["shield"], `wire "${cable.shield}"`, "a wire of this file", "Set it to null.");
  }
}

/** What a part names and the harness does not have: the box it belongs to, the connector it is mated with. */
export function* danglingOfPart(harness: Known, part: Part): Generator<Dangling> {
  if (part.kind !== "connector") return;
  const { module } = part.belongsTo;
  if (module && harness.parts[module]?.kind !== "module") {
    yield reference(["belongsTo", "module"], `"${module}"`, "a module of this file", "Set it to null.");
  }
  const mate = part.matedWith;
  if (mate && (harness.parts[mate]?.kind !== "connector" || mate === part.id)) {
    yield reference(["matedWith"], `"${mate}"`, "another connector of this file", "Set it to null.");
  }
}

function reference(path: readonly PropertyKey[], found: string, expected: string, next: string): Dangling {
  return { code: "dangling-reference", path, found, expected, next };
}
