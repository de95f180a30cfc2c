import { type ContactKey, contactKey, keyOfEnd, refOfKey } from "../../graph/contacts.ts";
import type { Harness, Part, RunId, Wire } from "../../graph/harness.ts";
import type { Context } from "../context.ts";
import { compareNames } from "../words.ts";

/** One lead: wires that follow one another through joints of two wires each, by designation. */
export type Lead = readonly Wire[];

/** The wire that goes on from another at one of its ends, through a joint that holds these two alone. */
function nextThrough(context: Context, wire: Wire, end: Wire["ends"][number]): Wire | null {
  if (end === "loose" || context.harness.parts[end.part]?.kind !== "splice") return null;
  const at = wiresInLine(context, end.part);
  return at.length === 2 && at.includes(wire) ? (at[0] === wire ? at[1]! : at[0]!) : null;
}

function wiresInLine({ traced }: Context, part: Parameters<typeof contactKey>[0]): readonly Wire[] {
  return [...traced.wiresAt(contactKey(part, 1)), ...traced.wiresAt(contactKey(part, 2))];
}

/** The lead that a wire belongs to. */
export function leadOf(context: Context, start: Wire): Lead {
  const lead = [start];
  for (const wire of lead) {
    for (const end of wire.ends) {
      const next = nextThrough(context, wire, end);
      if (next && !lead.includes(next)) lead.push(next);
    }
  }
  return lead.sort((a, b) => compareNames(a.designation, b.designation));
}

/** Stated lengths of runs together, metres: at least so much where one of them is not stated. */
export function sumOfRuns({ runs }: Pick<Harness, "runs">, ids: Iterable<RunId>) {
  let sum_m = 0;
  let isKnown = true;
  for (const id of ids) {
    const length_m = runs[id]?.length_m ?? "unknown";
    if (length_m === "unknown") isKnown = false;
    else sum_m += length_m;
  }
  return { sum_m, isKnown };
}

/** What a lead can have in the middle of a run; a spare under its cap, or a loose end, is left where it was cut off. */
const IN_LINE: ReadonlySet<Part["kind"]> = new Set(["splice", "fuse", "diode", "resistor", "capacitor"]);

/**
 * The runs that a wire surely follows to their ends: one that goes on beyond a joint or a fuse may be left halfway,
 * and a spare may be cut off anywhere.
 */
export function ownRuns(context: Context, wire: Wire): readonly RunId[] {
  const shared = new Set<RunId>();
  for (const end of wire.ends) {
    const part = end === "loose" ? undefined : context.harness.parts[end.part];
    if (!part || part.kind === "cap") return [];
    if (!IN_LINE.has(part.kind)) continue;
    for (const other of wiresInLine(context, part.id))
      if (other !== wire) for (const id of other.runs) shared.add(id);
  }
  return wire.runs.filter((id) => !shared.has(id));
}

/**
 * The wires that lead from a contact to the next thing that branches or works: through joints of two wires, fuses
 * and mated plugs.
 */
export function wiresOnward(context: Context, starts: readonly ContactKey[]): readonly Wire[] {
  const wires: Wire[] = [];
  const seen = new Set<ContactKey>(starts);
  let at: readonly ContactKey[] = starts;
  while (at.length) {
    const here = [...new Set(at.flatMap((key) => context.traced.wiresAt(key)))].filter(
      (wire) => !wires.includes(wire),
    );
    if (here.length !== 1) break;
    const [wire] = here;
    wires.push(wire!);
    const far = wire!.ends.map(keyOfEnd).find((key) => key !== null && !seen.has(key));
    if (!far) break;
    at = beyond(context, far).filter((key) => !seen.has(key));
    for (const key of [far, ...at]) seen.add(key);
  }
  return wires;
}

function beyond({ harness, points }: Context, key: ContactKey): readonly ContactKey[] {
  const { part: id, contact } = refOfKey(key);
  const part = harness.parts[id];
  if (part?.kind === "splice") return [contactKey(id, 1), contactKey(id, 2)];
  if (part?.kind === "fuse") return [contactKey(id, 3 - contact)];
  return part?.kind === "connector" ? (points.pointAt(id, contact)?.landings ?? []) : [];
}
