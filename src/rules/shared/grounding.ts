import type { Point } from "../../electrical/points.ts";
import { type ContactKey, contactKey, contactsOf, keyOfEnd, refOfKey } from "../../graph/contacts.ts";
import type { Cable, Harness, Module, PartId, Wire, WireId } from "../../graph/harness.ts";
import type { Context } from "../context.ts";
import { byName } from "../words.ts";

/** What draws current and has to bring it back: a box of the new equipment, or a load. */
export type Consumer = {
  readonly id: string;
  readonly name: string;
  readonly module: Module | null;
  readonly isLoad: boolean;
  /** Inputs that carry its current. */
  readonly feeds: readonly Point[];
  /** Contacts that its current goes back by. */
  readonly grounds: readonly Point[];
  /** Shields and signal grounds, which are not made to carry it. */
  readonly shields: readonly Point[];
};

const remembered = new WeakMap<Context, readonly Consumer[]>();

/** Every consumer of the job, in the order of the parts. */
export function consumersOf(context: Context): readonly Consumer[] {
  let found = remembered.get(context);
  if (!found) {
    found = makeConsumers(context);
    remembered.set(context, found);
  }
  return found;
}

function makeConsumers(context: Context): readonly Consumer[] {
  const found: Consumer[] = [];
  for (const { id, module, points } of context.newUnits) {
    const all = [...points, ...(context.points.standIns.get(id) ?? [])].filter(
      (point) => !context.isLeftOut(point),
    );
    const feeds = all.filter((point) => isPower(point.means) && isTaken(point, id));
    if (!feeds.length) continue;
    found.push({
      id,
      name: module?.designation ?? [...points].sort(byName)[0]!.part.designation,
      module,
      isLoad: false,
      feeds,
      grounds: all.filter(isPowerReturn).sort(byName),
      shields: all.filter(isShield),
    });
  }
  for (const part of context.parts) {
    if (part.kind !== "load") continue;
    const [live, back] = [context.points.pointAt(part.id, 1), context.points.pointAt(part.id, 2)];
    if (!live || !back) continue;
    found.push({
      id: part.id,
      name: part.designation,
      module: null,
      isLoad: true,
      feeds: [live],
      grounds: [back],
      shields: [],
    });
  }
  return found;
}

/** What a box works on: a feed, or the supply of a camera. */
function isPower({ group, id }: Point["means"]): boolean {
  return group === "feed" || id === "camera-power";
}

/** Takes itself, or stands in the mated half for a contact of the box that does. */
function isTaken(point: Point, unit: string): boolean {
  return point.unit === unit ? point.direction === "takes" : point.direction === "gives";
}

/** Signal grounds: thin copper that a picture or a sound is measured against. */
const SIGNAL_GROUNDS = new Set([
  "audio-ground",
  "shield-drain",
  "antenna-ground",
  "microphone-shield",
  "microphone-minus",
  "aux-ground",
  "phone-minus",
  "video-shield",
]);

/** A shield's contact, or that of a signal ground. */
export function isShield({ means }: Point): boolean {
  return SIGNAL_GROUNDS.has(means.id) || (means.group === "line-level" && means.polarity === "minus");
}

/** A ground that only tells volts: what it measures must not be moved by anybody's current. */
export function isSenseGround({ means }: Point): boolean {
  return means.id === "sense-ground" || means.id === "steering-key-ground";
}

function isPowerReturn(point: Point): boolean {
  return point.means.group === "ground" && !isShield(point) && !isSenseGround(point);
}

/** The frame, the battery's minus, or a ground lead of the vehicle. */
export function isFrame(point: Point): boolean {
  return point.direction === "gives" && isPowerReturn(point);
}

const SCREENED: ReadonlySet<Cable["kind"]> = new Set(["coax", "shielded", "shielded-pair"]);
const shieldsOf = new WeakMap<Harness["cables"], ReadonlySet<WireId>>();

/** The wires that stand for the shield of a cable. */
export function shieldWires({ cables }: Harness): ReadonlySet<WireId> {
  let found = shieldsOf.get(cables);
  if (!found) {
    const made = new Set<WireId>();
    for (const cable of Object.values(cables))
      if (cable.shield !== null && SCREENED.has(cable.kind)) made.add(cable.shield);
    found = made;
    shieldsOf.set(cables, found);
  }
  return found;
}

type Allow = {
  readonly wire?: (wire: Wire) => boolean;
  readonly contact?: (key: ContactKey) => boolean;
  /** Fuses and switches are walked through as well. */
  readonly fuses?: boolean;
};

/** Every contact that copper joins to the starts, along the wires and past the contacts that are allowed. */
export function copperFrom(
  context: Context,
  starts: readonly ContactKey[],
  allow: Allow = {},
): ReadonlySet<ContactKey> {
  const mates = matesOf(context.harness);
  const seen = new Set<ContactKey>(starts);
  const queue = [...starts];
  const reach = (key: ContactKey) => {
    if (seen.has(key) || (allow.contact && !allow.contact(key))) return;
    seen.add(key);
    queue.push(key);
  };
  for (let next = 0; next < queue.length; next++) {
    const here = queue[next]!;
    const { part: id, contact } = refOfKey(here);
    const part = context.harness.parts[id];
    const mate = mates.get(id);
    const mated = mate && context.harness.parts[mate];
    if (mated && contact <= contactsOf(mated).length) reach(contactKey(mated.id, contact));
    const passes =
      part?.kind === "splice" || (allow.fuses && (part?.kind === "fuse" || part?.kind === "switch"));
    if (part && passes) reach(contactKey(id, 3 - contact));
    for (const wire of context.traced.wiresAt(here)) {
      if (allow.wire && !allow.wire(wire)) continue;
      for (const end of wire.ends) {
        const key = keyOfEnd(end);
        if (key !== null) reach(key);
      }
    }
  }
  return seen;
}

const matesFound = new WeakMap<Harness["parts"], ReadonlyMap<PartId, PartId>>();

/** What each connector is plugged into, whichever of the two says so. */
function matesOf({ parts }: Harness): ReadonlyMap<PartId, PartId> {
  const known = matesFound.get(parts);
  if (known) return known;
  const mates = new Map<PartId, PartId>();
  for (const part of Object.values(parts)) {
    const other = part.kind === "connector" && part.matedWith ? parts[part.matedWith] : undefined;
    if (other?.kind !== "connector" || other === part) continue;
    if (!mates.has(part.id)) mates.set(part.id, other.id);
    if (!mates.has(other.id)) mates.set(other.id, part.id);
  }
  matesFound.set(parts, mates);
  return mates;
}

/** The points that stand at a set of contacts. */
export function pointsAt(context: Context, keys: Iterable<ContactKey>): readonly Point[] {
  const found = new Set<Point>();
  for (const key of keys) {
    const { part, contact } = refOfKey(key);
    const point = context.points.pointAt(part, contact);
    if (point) found.add(point);
  }
  return [...found];
}

/** What a consumer is stated to draw, amperes; `null` where nothing is stated. */
export function drawn_A({ isLoad, feeds }: Consumer): number | null {
  let sum_A: number | null = null;
  for (const { part, contact } of feeds) {
    const amps = isLoad && part.kind === "load" ? part.current_A : contact.cavity?.current_A;
    if (typeof amps === "number") sum_A = (sum_A ?? 0) + amps;
  }
  return sum_A;
}
