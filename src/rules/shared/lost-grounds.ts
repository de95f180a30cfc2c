import type { KeyState } from "../../electrical/operate/key-state.ts";
import { type ContactKey, contactKey, keyOfEnd, refOfKey } from "../../graph/contacts.ts";
import type { Load, PartId, Wire, WireId } from "../../graph/harness.ts";
import type { Context } from "../context.ts";
import { compareNames } from "../words.ts";

export type Lost = { readonly part: PartId } | { readonly wire: WireId };

/** A load that is dead by itself and gets volts by the way of others, in a state. */
export type Ghost = {
  readonly load: Load;
  readonly volts: number;
  readonly state: KeyState;
};

/** Loads by the circuit of their minus, where at least two with different feeds come together. */
export function sharedReturns(context: Context): ReadonlyMap<number, readonly Load[]> {
  const byReturn = new Map<number, Load[]>();
  for (const part of context.parts) {
    if (part.kind !== "load") continue;
    const { id } = context.points.circuitAt(part.id, 2).circuit;
    const group = byReturn.get(id);
    if (group) group.push(part);
    else byReturn.set(id, [part]);
  }
  for (const [id, loads] of byReturn) {
    if (feedsApart(context, loads)) loads.sort((a, b) => compareNames(a.designation, b.designation));
    else byReturn.delete(id);
  }
  return byReturn;
}

/** They hang on more than one lead, and what hangs on those is fed at some time. */
export function feedsApart(context: Context, loads: readonly Load[]): boolean {
  const circuits = new Set(
    loads
      .map((load) => context.points.circuitAt(load.id, 1))
      .filter((circuit) => context.feeds.isLive(circuit)),
  );
  return circuits.size > 1;
}

/** A lead that has less than this is dead. @source a threshold of our own */
const DEAD_V = 0.5;

/**
 * The load whose dead lead is lifted most by what comes back through the others.
 * @param lost what opens; `null` where the ground is missing already
 */
export function worstGhost(context: Context, loads: readonly Load[], lost: Lost | null): Ghost | null {
  const { value: most_V } = context.profile.limits.backFeed_V;
  let worst: Ghost | null = null;
  for (const state of context.solved.states) {
    const then = lost ? context.solved.withOpen(lost, state) : context.solved.at(state);
    for (const load of loads) {
      const plus = contactKey(load.id, 1);
      const volts = then.volts(plus);
      if (typeof volts !== "number" || volts <= Math.max(most_V, worst?.volts ?? 0)) continue;
      // By its own lead alone, it would be dead.
      const own = lost ? context.solved.at(state) : context.solved.withOpen({ part: load.id }, state);
      const alone = own.volts(plus);
      if (alone === "floating" || Math.abs(alone) <= DEAD_V) worst = { load, volts, state };
    }
  }
  return worst;
}

/** What of a shared ground may open: a stud with several leads, and each lead to it that others hang on. */
export type Opening = { readonly lost: Lost; readonly loads: readonly Load[] };

export function openingsOf(context: Context, circuit: number, loads: readonly Load[]): readonly Opening[] {
  const grounds = context.points.circuits[circuit]!.points.filter(
    ({ means, direction }) => means.group === "ground" && direction === "gives",
  );
  const [ground, second] = grounds;
  // Of two ways to ground, one may open and the other bears it.
  if (!ground || second) return [];
  const wires = context.points.wiresAt(ground);
  const found: Opening[] = [];
  if (ground.part.kind === "ground" && wires.length > 1)
    found.push({ lost: { part: ground.part.id }, loads });
  for (const wire of [...wires].sort((a, b) => compareNames(a.designation, b.designation))) {
    const beyond = beneath(context, wire, new Set(ground.landings));
    const own = loads.filter((load) => beyond.has(contactKey(load.id, 2)));
    if (own.length > 1) found.push({ lost: { wire: wire.id }, loads: own });
  }
  return found;
}

/** The contacts that hang on a wire, seen from the ground. */
function beneath(context: Context, from: Wire, grounds: ReadonlySet<ContactKey>): ReadonlySet<ContactKey> {
  const found = new Set<ContactKey>();
  const queue = from.ends.flatMap((end) => {
    const key = keyOfEnd(end);
    return key === null || grounds.has(key) ? [] : [key];
  });
  for (const key of queue) {
    if (found.has(key) || grounds.has(key)) continue;
    found.add(key);
    const { part: id, contact } = refOfKey(key);
    const part = context.harness.parts[id];
    if (part?.kind === "splice") queue.push(contactKey(id, 3 - contact));
    if (part?.kind === "connector") {
      for (const landing of context.points.pointAt(id, contact)?.landings ?? []) queue.push(landing);
    }
    for (const wire of context.traced.wiresAt(key))
      if (wire !== from) for (const end of wire.ends) if (end !== "loose") queue.push(keyOfEnd(end)!);
  }
  return found;
}
