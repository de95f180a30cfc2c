import { contactsOf } from "../../graph/contacts.ts";
import type { Connector, Harness, PartId } from "../../graph/harness.ts";
import type { Builder } from "./builder.ts";

/** The contact that a contact is plugged into, by nodes. */
export type Mates = ReadonlyMap<
  number,
  { readonly node: number; readonly part: Connector; readonly contact: number }
>;

/** Joins mated connectors cavity to cavity, each pair once, whichever of the two says so. */
export function addMates(builder: Builder): Mates {
  const { harness, usual } = builder.setting;
  const mates = new Map<number, { node: number; part: Connector; contact: number }>();
  const joined = new Set<string>();
  for (const part of Object.values(harness.parts)) {
    const other = mateOf(harness, part.id);
    if (part.kind !== "connector" || !other) continue;
    const pair = part.id < other.id ? `${part.id} ${other.id}` : `${other.id} ${part.id}`;
    if (joined.has(pair)) continue;
    joined.add(pair);
    const count = Math.min(contactsOf(part).length, contactsOf(other).length);
    if (count > 0) builder.note("mate", part.id, usual.mate_ohm * 1000);
    for (let contact = 1; contact <= count; contact++) {
      const [from, to] = [builder.node(part.id, contact), builder.node(other.id, contact)];
      builder.add(part.id, "mate", { kind: "resistance", from, to, resistance_ohm: usual.mate_ohm }, contact);
      if (!mates.has(from)) mates.set(from, { node: to, part: other, contact });
      if (!mates.has(to)) mates.set(to, { node: from, part, contact });
    }
  }
  return mates;
}

function mateOf(harness: Pick<Harness, "parts">, id: PartId): Connector | null {
  const part = harness.parts[id];
  if (part?.kind !== "connector" || part.matedWith === null) return null;
  const other = harness.parts[part.matedWith];
  return other?.kind === "connector" && other !== part ? other : null;
}
