import type { Point } from "../../electrical/points.ts";
import type { Context } from "../context.ts";
import { byName } from "../words.ts";
import { takesPower } from "./reversed.ts";
import { isOpenForBridge } from "./speakers.ts";

/** A lead that wants a partner, and the leads of other boxes that would do. */
export type Wanted = {
  readonly point: Point;
  readonly others: readonly Point[];
  /** One lead wants it and one would do: there is only one way to join. */
  readonly certain: boolean;
};

export type Unjoined = {
  /** From the side that takes; a lead of which nobody can say is listed once. */
  readonly wanted: readonly Wanted[];
  /** The certain partner of a lead, from either side. */
  readonly partnerOf: ReadonlyMap<Point, Point>;
  /** Every lead that `wanted` speaks of, on either side. */
  readonly spokenOf: ReadonlySet<Point>;
  /** Leads that a box cannot do without and that join nothing. */
  readonly required: ReadonlySet<Point>;
  /** Boxes of the new equipment that draw current and reach no ground. */
  readonly ungrounded: ReadonlySet<string>;
};

const NEVER_JOINED = new Set(["none", "safety"]);
const MOST_NAMED = 3;
const MOST_BOXES = 20;

/**
 * Leads that wait for a partner of the same function. Several rules speak of them; this settles which, so
 * that one trouble is told once.
 */
export function unjoinedOf(context: Context): Unjoined {
  const ungrounded = ungroundedUnits(context);
  const wanted: Wanted[] = [];
  const partnerOf = new Map<Point, Point>();
  const spokenOf = new Set<Point>();
  for (const points of context.points.byFunction.values()) {
    if (NEVER_JOINED.has(points[0]!.means.group)) continue;
    const isGround = points[0]!.means.group === "ground";
    const open = points.filter(
      (point) => point.unit !== null && isOpen(context, point) && !(isGround && ungrounded.has(point.unit)),
    );
    if (open.length < 2) continue;
    const takers = open.filter(canTake).sort(byName);
    const givers = byUnit(open.filter(canGive).sort(byName));
    const certain = open.length === 2;
    const told = new Set<Point>();
    for (const taker of takers) {
      if (told.has(taker)) continue;
      const others = fitting(givers, taker);
      if (!others.length) continue;
      wanted.push({ point: taker, others, certain });
      spokenOf.add(taker);
      for (const other of others) spokenOf.add(other);
      if (!certain) continue;
      told.add(taker).add(others[0]!);
      partnerOf.set(taker, others[0]!).set(others[0]!, taker);
    }
  }
  return { wanted, partnerOf, spokenOf, ungrounded, required: requiredLeads(context) };
}

function byUnit(points: readonly Point[]): readonly (readonly Point[])[] {
  const groups = new Map<string | null, Point[]>();
  for (const point of points) {
    const group = groups.get(point.unit);
    if (group) group.push(point);
    else groups.set(point.unit, [point]);
  }
  return [...groups.values()];
}

/** A few leads of other boxes that would do. Looks at a few of each: a chart has hundreds at the most. */
function fitting(givers: readonly (readonly Point[])[], taker: Point): readonly Point[] {
  const found: Point[] = [];
  for (const group of givers.slice(0, MOST_BOXES)) {
    if (group[0]!.unit === taker.unit) continue;
    for (const giver of group.slice(0, MOST_NAMED)) {
      if (fits(giver, taker)) found.push(giver);
      if (found.length === MOST_NAMED) return found;
    }
  }
  return found;
}

/** Joined to nothing, not capped, and not put aside by a person. */
function isOpen(context: Context, point: Point): boolean {
  return !context.isLeftOut(point) && context.isAlone(point) && context.circuitOf(point).caps.length === 0;
}

function canTake(point: Point): boolean {
  return point.direction !== "gives" && point.direction !== "none";
}

function canGive(point: Point): boolean {
  return point.direction !== "takes" && point.direction !== "none";
}

/** Of two boxes; and where a direction is not known, of the two sides of the job. */
function fits(giver: Point, taker: Point): boolean {
  if (giver === taker || giver.unit === taker.unit) return false;
  if (giver.direction !== "unknown" && taker.direction !== "unknown") return true;
  return giver.side !== taker.side;
}

/** The contacts that bring a box's current back; a ground that is only measured against is none, if there is another. */
export function groundsOfBox(points: readonly Point[]): readonly Point[] {
  const grounds = points.filter((point) => point.means.group === "ground");
  const carrying = grounds.filter((point) => point.means.id !== "sense-ground");
  return carrying.length ? carrying : grounds;
}

function ungroundedUnits(context: Context): ReadonlySet<string> {
  const found = new Set<string>();
  for (const unit of context.newUnits) {
    const draws = unit.points.some((point) => takesPower(point) && !context.isLeftOut(point));
    if (!draws) continue;
    const grounded = groundsOfBox([...unit.points, ...(context.points.standIns.get(unit.id) ?? [])]).some(
      (point) => context.grounds.isLive(context.circuitOf(point)),
    );
    if (!grounded) found.add(unit.id);
  }
  return found;
}

const FEEDS = new Set(["constant-feed", "switched-feed", "ignition-feed"]);
/** Of these a half is no use without the other. */
const PAIRED = /^(speaker-.+-(plus|minus)|can-(high|low))$/;

function requiredLeads(context: Context): ReadonlySet<Point> {
  const required = new Set<Point>();
  const judge = (point: Point): void => {
    if (context.isAlone(point)) required.add(point);
  };
  for (const unit of context.newUnits) {
    for (const point of unit.points) {
      if (point.direction !== "takes" || point.contact.cavity?.use !== "expected") continue;
      if (FEEDS.has(point.means.id)) judge(point);
      if (point.means.id === "amplifier-turn-on" && unit.module?.wakes === "by-lead") judge(point);
    }
  }
  for (const points of context.points.byUnit.values()) {
    const joined = new Set<string>();
    const halves = points.filter((point) => PAIRED.test(point.means.id));
    if (!halves.length) continue;
    for (const point of halves) if (!context.isAlone(point)) joined.add(point.means.id);
    for (const point of halves) {
      if (context.isLeftOut(point) || joined.has(point.means.id)) continue;
      if (joined.has(otherHalf(point.means.id)) && !isOpenForBridge(context, point)) judge(point);
    }
  }
  return required;
}

/** "speaker-front-left-plus" → "speaker-front-left-minus". */
export function otherHalf(name: string): string {
  const swaps = [
    ["-plus", "-minus"],
    ["-minus", "-plus"],
    ["-high", "-low"],
    ["-low", "-high"],
  ] as const;
  for (const [end, other] of swaps) if (name.endsWith(end)) return name.slice(0, -end.length) + other;
  return name;
}
