import { type ContactKey, contactKey, keyOfEnd, keysOf } from "../../graph/contacts.ts";
import type { Harness, Part, PartId, WireId } from "../../graph/harness.ts";

/** What lies between two contacts on a way: a wire, or the inside of a part. */
export type Link =
  | { readonly to: ContactKey; readonly wire: WireId }
  | { readonly to: ContactKey; readonly part: PartId };

type Ways = ReadonlyMap<ContactKey, readonly Link[]>;

/** Pairs of contacts that a part joins inside, by their numbers. */
function joined(part: Part, throughLoads: boolean): readonly (readonly [number, number])[] {
  switch (part.kind) {
    case "splice":
    case "fuse":
    case "switch":
    case "resistor":
      return [[1, 2]];
    case "diode":
      return [[1, 2]];
    case "relay": {
      const coil: readonly (readonly [number, number])[] = throughLoads ? [[2, 3]] : [];
      return part.poles === "make" ? [[1, 4], ...coil] : [[1, 4], [1, 5], ...coil];
    }
    case "load":
    case "speaker":
    case "capacitor":
    case "supply":
      return throughLoads ? [[1, 2]] : [];
    default:
      return [];
  }
}

/**
 * From contact to contact, by wires, mates, joints and whatever lets current pass.
 * @param throughLoads also through lamps, coils, speakers and batteries
 */
export function linksOf(harness: Pick<Harness, "parts" | "wires">, throughLoads: boolean): Ways {
  const ways = new Map<ContactKey, Link[]>();
  const add = (from: ContactKey, link: Link) => {
    const list = ways.get(from);
    if (list) list.push(link);
    else ways.set(from, [link]);
  };
  for (const wire of Object.values(harness.wires)) {
    const [a, b] = [keyOfEnd(wire.ends[0]), keyOfEnd(wire.ends[1])];
    if (!a || !b) continue;
    add(a, { to: b, wire: wire.id });
    add(b, { to: a, wire: wire.id });
  }
  for (const part of Object.values(harness.parts)) {
    for (const [from, to] of joined(part, throughLoads)) {
      const [a, b] = [contactKey(part.id, from), contactKey(part.id, to)];
      add(a, { to: b, part: part.id });
      // Against a diode no current passes; a way that is asked through loads is asked for the copper.
      if (part.kind !== "diode" || throughLoads) add(b, { to: a, part: part.id });
    }
    const mate = part.kind === "connector" && part.matedWith ? harness.parts[part.matedWith] : undefined;
    if (!mate) continue;
    const shared = Math.min(keysOf(part).length, keysOf(mate).length);
    for (let contact = 1; contact <= shared; contact++) {
      const [a, b] = [contactKey(part.id, contact), contactKey(mate.id, contact)];
      add(a, { to: b, part: mate.id });
      add(b, { to: a, part: part.id });
    }
  }
  return ways;
}

/** The way with the fewest steps; `null` where there is none. The start has no link. */
export function shortestWay(
  ways: Ways,
  from: ContactKey,
  to: ReadonlySet<ContactKey>,
): readonly { readonly at: ContactKey; readonly by: Link | null }[] | null {
  const came = new Map<ContactKey, { readonly from: ContactKey; readonly by: Link } | null>([[from, null]]);
  const queue: ContactKey[] = [from];
  for (let next = 0; next < queue.length; next++) {
    const at = queue[next]!;
    if (to.has(at)) {
      const way: { at: ContactKey; by: Link | null }[] = [];
      for (let step: ContactKey | null = at; step !== null; ) {
        const back: { readonly from: ContactKey; readonly by: Link } | null = came.get(step) ?? null;
        way.push({ at: step, by: back?.by ?? null });
        step = back?.from ?? null;
      }
      return way.reverse();
    }
    for (const link of ways.get(at) ?? []) {
      if (came.has(link.to)) continue;
      came.set(link.to, { from: at, by: link });
      queue.push(link.to);
    }
  }
  return null;
}
