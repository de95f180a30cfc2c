import { BLADES } from "../../electrical/fuse/blade.ts";
import { mostAllowed } from "../../electrical/fuse/choose.ts";
import { formFor } from "../../electrical/operate/read-parts.ts";
import type { Point } from "../../electrical/points.ts";
import { type ContactKey, contactKey, keyOfEnd, refOfKey } from "../../graph/contacts.ts";
import type { Fuse, Part, Wire } from "../../graph/harness.ts";
import type { Context } from "../context.ts";
import { compareNames } from "../words.ts";
import { type Bears, bears } from "./bears.ts";
import { lengthOf, type Reached, walkLeads, wiresOf } from "./lead-walk.ts";
import { type Guard, ratingOf, type Stretch } from "./stretches.ts";

/** A wire that bears less than the fuse above it lets through. */
export type Thin = {
  readonly stretch: Stretch;
  readonly wire: Wire;
  readonly rating_A: number;
  readonly bears: Bears;
  /** The fuse's rating, of what the wire bears. */
  readonly share_percent: number;
  /** Where the way to it thins: a joint that thicker wire leads to, and more than one wire leaves. `null`: at the fuse. */
  readonly branch: ContactKey | null;
};

/** Above this share a fuse no longer protects (33 CFR 183.455(c)). */
export const DANGER_percent = 150;
/** A lead of at most 7 in may be thinner (33 CFR 183.425(g)). */
const PIGTAIL_m = 0.178;

const remembered = new WeakMap<Context, readonly Thin[]>();

/** Every wire that is too thin for the fuse that protects it, by fuse and designation. */
export function thinWires(context: Context): readonly Thin[] {
  let found = remembered.get(context);
  if (!found) {
    found = context.stretches.all.flatMap((stretch) => thinIn(context, stretch));
    remembered.set(context, found);
  }
  return found;
}

function thinIn(context: Context, stretch: Stretch): readonly Thin[] {
  const { guard } = stretch;
  const rating_A = ratingOf(guard);
  if (rating_A === null) return [];
  const { harness } = context;
  const thin = new Map<Wire, Bears>();
  for (const id of stretch.circuits) {
    for (const wireId of context.points.circuits[id]!.circuit.wires) {
      const wire = harness.wires[wireId]!;
      const found = bears(harness, wire);
      if (!found || rating_A <= allowed_A(context, guard, found.amps) + 1e-9) continue;
      if ((lengthOf(harness, wire) ?? Number.POSITIVE_INFINITY) > PIGTAIL_m) thin.set(wire, found);
    }
  }
  if (!thin.size) return [];
  const reached = walkLeads(context, startsOf(context, stretch), isPassed);
  const nextFuses = nearNextFuse(context, stretch);
  // What only signals cannot overload its lead for long, and a dead short opens a fuse of up to 150 % of it at once.
  const isHarmless = (wire: Wire, share: number) =>
    share * 100 <= DANGER_percent && endsInSignal(context, reached, wire);
  return [...thin]
    .filter(([wire, { amps }]) => !isShortWayToFuse(wire, nextFuses) && !isHarmless(wire, rating_A / amps))
    .map(
      ([wire, found]): Thin => ({
        stretch,
        wire,
        rating_A,
        bears: found,
        share_percent: (rating_A / found.amps) * 100,
        branch: branchOf(context, reached, wire, thin),
      }),
    )
    .sort((a, b) => compareNames(a.wire.designation, b.wire.designation));
}

/** Tables of what a wire bears agree no closer than this. */
const TABLES_AGREE = 1.1;

/**
 * What a fuse may be rated at, over a wire that bears so much: by the harness's own limit, else by the rule of its
 * settings, else by the profile, with the next standard rating let pass where it is past the table by a tenth at most.
 */
export function allowed_A(context: Context, guard: Guard, amps: number): number {
  const { rules, electrical } = context.harness.settings;
  const byBook_A = (amps * context.profile.limits.fuseShare_percent.value) / 100;
  if (rules.limits.some(({ name }) => name === "fuseShare_percent")) return byBook_A;
  if (electrical.fuseRule === "150-percent") return Math.max(amps * 1.5, byBook_A);
  if (electrical.fuseRule === "at-most-ampacity") return byBook_A;
  const form = guard.kind === "fuse" ? formFor(guard.fuse) : "regular";
  const next_A = mostAllowed("next-size", amps, BLADES[form]);
  return Math.max(
    byBook_A,
    electrical.fuseRule === "next-size" ? next_A : Math.min(next_A, amps * TABLES_AGREE),
  );
}

const PASSED: ReadonlySet<Part["kind"]> = new Set(["switch", "relay", "diode", "resistor"]);
/** Parts that current passes on its way, but for fuses. */
export const isPassed = (part: Part): boolean => PASSED.has(part.kind);

/** Where a stretch begins: the far contact of its fuse, or the source itself. */
export function startsOf(context: Context, { guard, source, start }: Stretch): readonly ContactKey[] {
  return guard.kind === "fuse" ? fuseContactsIn(context, guard.fuse, start) : source.landings;
}

export function fuseContactsIn(context: Context, fuse: Fuse, circuit: number): readonly ContactKey[] {
  return [1, 2]
    .filter((contact) => context.traced.circuitAt(fuse.id, contact)?.id === circuit)
    .map((contact) => contactKey(fuse.id, contact));
}

/** Contacts that lie so close before the next fuse that the limit of its distance covers them. */
function nearNextFuse(context: Context, stretch: Stretch): ReadonlyMap<ContactKey, Reached> {
  const starts: ContactKey[] = [];
  for (const circuit of stretch.circuits) {
    for (const { gate, to } of context.ways[circuit] ?? []) {
      if (gate.kind !== "fuse") continue;
      const below = context.stretches
        .at(to)
        .some(
          ({ guard, above }) => above === stretch && guard.kind === "fuse" && guard.fuse.id === gate.fuse,
        );
      const fuse = context.harness.parts[gate.fuse];
      if (below && fuse?.kind === "fuse") starts.push(...fuseContactsIn(context, fuse, circuit));
    }
  }
  const limit_m = context.profile.limits.fuseDistance_mm.value / 1000;
  const found = walkLeads(context, starts);
  return new Map([...found].filter(([, { isKnown, length_m }]) => isKnown && length_m <= limit_m));
}

function isShortWayToFuse(wire: Wire, near: ReadonlyMap<ContactKey, Reached>): boolean {
  return wire.ends.some((end) => end !== "loose" && near.get(keyOfEnd(end)!)?.wire === wire);
}

/** Electronics that draw less than this need no thick lead (33 CFR 183.425). */
const SIGNAL_A = 1;

/** Whether a lead, followed away from its fuse through joints of two wires, ends at an input that draws next to nothing. */
function endsInSignal(context: Context, reached: ReadonlyMap<ContactKey, Reached>, wire: Wire): boolean {
  let at = farEnd(reached, wire);
  for (let step = 0; at && step < 20; step++) {
    const { part: id, contact } = refOfKey(at.key);
    const point = context.points.pointAt(id, contact);
    const wires = point ? context.points.wiresAt(point) : [];
    const last = at;
    if (point && point.unit !== null && wires.length <= 2) return isSignal(point);
    if (landingsAt(context, at.key) !== 2 || context.harness.parts[id]?.kind !== "splice") return false;
    const next: Reached | undefined = [...reached.values()].find(
      (one) => one.wire && one.before && isAtSplice(one.before.key, id) && one.wire !== last.wire,
    );
    at = next;
  }
  return false;
}

function isAtSplice(key: ContactKey, id: string): boolean {
  return refOfKey(key).part === id;
}

function isSignal(point: Point): boolean {
  const stated =
    point.part.kind === "load" ? point.part.current_A : (point.contact.cavity?.current_A ?? "unknown");
  if (stated !== "unknown") return stated < SIGNAL_A;
  return (
    point.direction === "takes" && (point.means.group === "control" || point.means.id === "illumination")
  );
}

function farEnd(reached: ReadonlyMap<ContactKey, Reached>, wire: Wire): Reached | undefined {
  return wire.ends
    .map((end) => (end === "loose" ? undefined : reached.get(keyOfEnd(end)!)))
    .find((one) => one?.wire === wire);
}

/** Follows the way back from a thin wire to the first that is thick enough. */
function branchOf(
  context: Context,
  reached: ReadonlyMap<ContactKey, Reached>,
  wire: Wire,
  thin: ReadonlyMap<Wire, Bears>,
): ContactKey | null {
  const far = farEnd(reached, wire);
  if (!far?.before) return null;
  const way = [...wiresOf(far.before)].reverse();
  let first: Reached = far;
  for (const before of way) {
    if (!thin.has(before)) {
      const at = first.before!;
      return landingsAt(context, at.key) > 2 ? at.key : null;
    }
    let back: Reached = first.before!;
    while (back.wire !== before) back = back.before!;
    first = back;
  }
  return null;
}

/** How many wires end at the place of a contact: both sides of a joint count. */
function landingsAt(context: Context, key: ContactKey): number {
  const { part, contact } = refOfKey(key);
  if (context.harness.parts[part]?.kind !== "splice") return context.traced.wiresAt(key).length;
  return context.traced.wiresAt(key).length + context.traced.wiresAt(contactKey(part, 3 - contact)).length;
}
