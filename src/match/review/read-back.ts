import { nameContact } from "../../catalogue/describe.ts";
import { contactKey, keyOfEnd } from "../../graph/contacts.ts";
import type {
  Cavity,
  Connector,
  ContactRef,
  Harness,
  PartId,
  Splice,
  Wire,
  WireId,
} from "../../graph/harness.ts";
import type { Decided, Fate, Group, SideName } from "./review.ts";
import { SIDES } from "./review.ts";

/** What holds a joint of the harness together: its wires and its splices. */
export type Copper = {
  readonly wires: readonly WireId[];
  readonly splices: readonly PartId[];
  /** Something else lands on it too: it is not to be taken away as a whole. */
  readonly shared: boolean;
};

export type ReadBack = Decided & { readonly copper: ReadonlyMap<Group, Copper> };

/** A connector's own names for its contacts: `names[i]` is contact i + 1. */
export type Housing = { readonly part: Connector; readonly names: readonly string[] };

/**
 * What a harness already says of two connectors: leads that it joins, caps, and leads that go somewhere else.
 * Copper is followed through wires and splices; whatever else is reached ends the way.
 * @param left `null` where that side is not in the harness yet: then nothing of the two is joined
 */
export function readBack(harness: Harness, left: Housing | null, right: Housing | null): ReadBack {
  const fates: Record<SideName, Record<string, Fate>> = { left: {}, right: {} };
  const elsewhere: Record<SideName, Record<string, string>> = { left: {}, right: {} };
  const groups: Group[] = [];
  const copper = new Map<Group, Copper>();
  const housings = { left, right };
  const wiresAt = wiresByContact(harness);
  const done = new Set<string>();
  for (const side of SIDES) {
    const housing = housings[side];
    for (const [index, name] of housing?.names.entries() ?? []) {
      if (!housing) break;
      const at: ContactRef = { part: housing.part.id, contact: index + 1 };
      const cavity = housing.part.cavities[index];
      if (done.has(contactKey(at.part, at.contact)) || !cavity) continue;
      const way = walk(harness, wiresAt, at);
      for (const ref of way.reached) done.add(contactKey(ref.part, ref.contact));
      const ours = (one: SideName) =>
        way.reached.flatMap((ref) => {
          const named = housings[one];
          return named && ref.part === named.part.id ? [named.names[ref.contact - 1]!] : [];
        });
      const found = { left: ours("left"), right: ours("right") };
      const others = way.reached.filter((ref) => ref.part !== left?.part.id && ref.part !== right?.part.id);
      if (found.left.length > 0 && found.right.length > 0) {
        const splice = way.splices.map((id) => harness.parts[id] as Splice)[0];
        const group: Group = { ...found, joint: splice?.method ?? null, from: "harness" };
        groups.push(group);
        copper.set(group, {
          wires: way.wires,
          splices: way.splices,
          shared: others.length > 0 || way.loose > 0,
        });
        continue;
      }
      const alone = found[side];
      if (others.length === 0) {
        if (alone.length > 1) for (const one of alone) elsewhere[side][one] = "another lead of its own side";
        else if (isSettled(cavity)) fates[side][name] = "apart";
        continue;
      }
      const [first] = others;
      const capped = others.length === 1 && alone.length === 1 && harness.parts[first!.part]?.kind === "cap";
      for (const one of alone) {
        if (capped) fates[side][one] = "capped";
        else elsewhere[side][one] = nameContact(harness, first!);
      }
    }
  }
  return { groups, fates, elsewhere, copper };
}

/** A person has said that nothing need be joined here; a chart's own "not used" is not a person's word. */
function isSettled({ use, function: name }: Cavity): boolean {
  return use === "spare" || (use === "optional" && name !== "not-used");
}

function wiresByContact(harness: Harness): ReadonlyMap<string, readonly Wire[]> {
  const map = new Map<string, Wire[]>();
  for (const wire of Object.values(harness.wires)) {
    for (const end of wire.ends) {
      const key = keyOfEnd(end);
      if (key) map.set(key, [...(map.get(key) ?? []), wire]);
    }
  }
  return map;
}

/** Every contact that copper reaches from one, through splices; itself first. */
function walk(harness: Harness, wiresAt: ReadonlyMap<string, readonly Wire[]>, from: ContactRef) {
  const reached: ContactRef[] = [];
  const splices: PartId[] = [];
  const wires = new Set<WireId>();
  const seen = new Set<string>();
  const todo: ContactRef[] = [from];
  let loose = 0;
  for (let at = todo.pop(); at; at = todo.pop()) {
    const key = contactKey(at.part, at.contact);
    if (seen.has(key)) continue;
    seen.add(key);
    if (harness.parts[at.part]?.kind === "splice") {
      if (!splices.includes(at.part)) splices.push(at.part);
      todo.push({ part: at.part, contact: at.contact === 1 ? 2 : 1 });
    } else reached.push(at);
    for (const wire of wiresAt.get(key) ?? []) {
      if (wires.has(wire.id)) continue;
      wires.add(wire.id);
      for (const end of wire.ends) {
        if (end === "loose") loose++;
        else todo.push(end);
      }
    }
  }
  return { reached, splices, wires: [...wires], loose };
}
