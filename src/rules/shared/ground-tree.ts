import type { Point } from "../../electrical/points.ts";
import { type ContactKey, keyOfEnd, keysOf, refOfKey } from "../../graph/contacts.ts";
import type { Wire } from "../../graph/harness.ts";
import type { Context } from "../context.ts";

/** How a contact is reached from the ground: by a wire, or through a joint or a mated contact. */
export type Step = { readonly wire: Wire | null; readonly from: ContactKey };
export type Tree = {
  readonly steps: ReadonlyMap<ContactKey, Step>;
  /** Wires beside which a second way leads to the ground: no unit depends on them alone. */
  readonly doubled: ReadonlySet<Wire>;
};

/** How each contact of a circuit is reached from its grounds. */
export function treeFrom(context: Context, grounds: readonly Point[]): Tree {
  const steps = new Map<ContactKey, Step>();
  const used = new Set<Wire>();
  const queue: ContactKey[] = [];
  const seconds: (readonly [ContactKey, ContactKey])[] = [];
  const reach = (key: ContactKey, step: Step): boolean => {
    if (steps.has(key)) return false;
    steps.set(key, step);
    queue.push(key);
    return true;
  };
  for (const point of grounds) for (const key of point.landings) reach(key, { wire: null, from: key });
  for (let next = 0; next < queue.length; next++) {
    const here = queue[next]!;
    for (const key of besides(context, here)) reach(key, { wire: null, from: here });
    for (const wire of context.traced.wiresAt(here)) {
      if (used.has(wire)) continue;
      used.add(wire);
      for (const end of wire.ends) {
        const key = keyOfEnd(end);
        if (key !== null && key !== here && !reach(key, { wire, from: here })) seconds.push([here, key]);
      }
    }
  }
  const doubled = new Set<Wire>();
  for (const [a, b] of seconds) {
    const [left, right] = [wiresTo(steps, a), wiresTo(steps, b)];
    for (const wire of left) if (!right.includes(wire)) doubled.add(wire);
    for (const wire of right) if (!left.includes(wire)) doubled.add(wire);
  }
  return { steps, doubled };
}

/** What a contact is one with, without a wire: the other side of a joint, the mated contact. */
function besides(context: Context, key: ContactKey): readonly ContactKey[] {
  const part = context.traced.partOf(key);
  if (part?.kind === "splice") return keysOf(part);
  const { part: id, contact } = refOfKey(key);
  return context.points.pointAt(id, contact)?.landings ?? [];
}

/** The wires between a point and the ground that it cannot do without. */
export function wayOf({ steps, doubled }: Tree, point: Point): readonly Wire[] {
  const start = point.landings.find((key) => steps.has(key));
  return start ? wiresTo(steps, start).filter((wire) => !doubled.has(wire)) : [];
}

/** The wires between a contact and the ground, along the way by which it was reached. */
export function wiresTo(steps: ReadonlyMap<ContactKey, Step>, start: ContactKey): readonly Wire[] {
  const wires: Wire[] = [];
  let at = start;
  for (let step = steps.get(at); step && step.from !== at; step = steps.get(at)) {
    if (step.wire) wires.push(step.wire);
    at = step.from;
  }
  return wires;
}

/** Copper when hot, and copper-clad aluminium of the least copper, rounded up. @source IEC 60228 for copper; from memory */
const COPPER_ohm_mm2_per_m = 0.023;
const CLAD_ohm_mm2_per_m = 0.04;
/** Of a mated contact or a joint, rounded up. @source from memory */
const PASSED_ohm = 0.006;

/**
 * No more than so much can lie between a contact and the ground, ohms, taken along one way: enough to say that a sum
 * is not worth while. A length that is not stated counts as one metre, a size as 0.75 mm².
 */
export function most_ohm({ steps }: Tree, point: Point): number {
  let sum = 0;
  let at = point.landings.find((key) => steps.has(key));
  for (let step = at && steps.get(at); at && step && step.from !== at; step = steps.get(at)) {
    if (step.wire) {
      const { length_m, area_mm2, material } = step.wire;
      const resistivity = material.startsWith("cca") ? CLAD_ohm_mm2_per_m : COPPER_ohm_mm2_per_m;
      const length = length_m === "unknown" ? (step.wire.runs.length ? MOST_m : 1) : length_m;
      sum += (resistivity * length) / (area_mm2 === "unknown" ? 0.75 : area_mm2);
    } else sum += PASSED_ohm;
    at = step.from;
  }
  return sum;
}

/** A wire whose length its runs tell is no longer than this in a vehicle. */
const MOST_m = 25;
