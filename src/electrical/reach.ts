import { isGround, LIVE_STATES, type LiveState } from "../catalogue/functions.ts";
import type { Harness, PartId, Switch } from "../graph/harness.ts";
import type { Point, PointCircuit, Points } from "./points.ts";
import { compareText, type Gate, type Ways, waysOf } from "./ways.ts";

/** A state in which something is live; "at-times": live, but no chart word says when (an indicator). */
export type ReachState = LiveState | "at-times";

const STATES: readonly ReachState[] = [...LIVE_STATES, "at-times"];
const BIT = new Map(STATES.map((state, index) => [state, 1 << index]));
const bits = (states: readonly ReachState[]): number =>
  states.reduce((sum, state) => sum | BIT.get(state)!, 0);

/** What one source brings to a circuit. */
export type Feed = {
  readonly source: Point;
  /** When the circuit may be live from it, whoever has closed a switch. */
  readonly live: readonly ReachState[];
  /** The same with every switch that a hand, a door or a brake lever works left open. */
  readonly unattended: readonly ReachState[];
  /** Fuses of the harness on the way; empty where none is met on the best-fed way. */
  readonly fuses: readonly PartId[];
  /** Where the protection stands: in the harness, behind the source's own cavity, nowhere, or not stated. */
  readonly protection: "fuse" | "far-side" | "none" | "unknown";
};

export type Summary = { readonly live: number; readonly unattended: number };

export type Reach = {
  /** Up to eight sources that feed the circuit, the one that hurts most first. The states of `liveAt` count them all. */
  feeds(circuit: PointCircuit): readonly Feed[];
  /** When the circuit may be live, over all sources. */
  liveAt(circuit: PointCircuit): readonly ReachState[];
  unattendedAt(circuit: PointCircuit): readonly ReachState[];
  isLive(circuit: PointCircuit): boolean;
  /** When a relay's coil between two circuits, by their ids, is pulled in. */
  pulled(coil: readonly [number, number]): Summary;
};

/** More sources than this on one circuit tell a reader nothing new, and would make the walk quadratic. */
const MOST_FEEDS = 8;
const KEY_STATES = bits(["accessory", "run", "crank", "unit-on"]);
const SWITCH_STATES: Readonly<Partial<Record<Switch["operatedBy"], number>>> = {
  "reverse-gear": bits(["reverse"]),
  "brake-pedal": bits(["brake-on"]),
  lights: bits(["lights-on"]),
};

/** When a relay's coil, between two circuits, is pulled in. */
type PulledBy = (coil: readonly [number, number]) => Summary;

/** The states that are left after a gate. */
function pass(gate: Gate, from: Summary, pulledBy: PulledBy): Summary {
  switch (gate.kind) {
    case "through":
    case "fuse":
      return from;
    case "switch": {
      if (gate.operatedBy === "key")
        return { live: from.live & KEY_STATES, unattended: from.unattended & KEY_STATES };
      const only = SWITCH_STATES[gate.operatedBy];
      if (only === undefined) return { live: from.live, unattended: 0 };
      return { live: from.live ? only : 0, unattended: from.unattended ? only : 0 };
    }
    case "make":
    case "rest": {
      const pulled = pulledBy(gate.coil);
      if (gate.kind === "rest")
        return { live: from.live & ~pulled.unattended, unattended: from.unattended & ~pulled.unattended };
      return { live: meet(from.live, pulled.live), unattended: meet(from.unattended, pulled.unattended) };
    }
  }
}

/** Live through a contact that closes in `pulled`: the states of both, or of the coil where words differ. */
function meet(from: number, pulled: number): number {
  if (!from || !pulled) return 0;
  return from & pulled || pulled;
}

type Arrival = {
  readonly source: Point;
  live: number;
  unattended: number;
  unfused: boolean;
  fuses: readonly PartId[];
};

/**
 * Which supplies and giving contacts feed each circuit, when, and through which fuses.
 * Grows in step with the harness: a circuit is passed again only when it learns something new.
 */
export function feedsOf(
  harness: Pick<Harness, "parts">,
  points: Points,
  ways: Ways = waysOf(harness, points, false),
): Reach {
  const sources = sourcesOf(points, (point) => statesOf(point) !== 0);
  let made: Found | null = null;
  // Asked for by the first contact that a feed reaches; most harnesses have none.
  const returns = (): Found => {
    made ??= returnsOf(harness, points);
    return made;
  };
  const pulledBy = (known: Found): PulledBy => pulledIn(known, returns);
  return walk(points, ways, sources, statesOf, pulledBy);
}

const groundWaysOf = new WeakMap<Points, Ways>();

function groundWays(harness: Pick<Harness, "parts">, points: Points): Ways {
  let ways = groundWaysOf.get(points);
  if (!ways) {
    ways = waysOf(harness, points, true);
    groundWaysOf.set(points, ways);
  }
  return ways;
}

/** The ground that each circuit has without the help of a relay. */
function returnsOf(harness: Pick<Harness, "parts">, points: Points): Found {
  const sources = sourcesOf(points, (point) => isGround(point.means.id));
  return spread(
    points,
    groundWays(harness, points),
    sources,
    () => bits(STATES),
    () => NOTHING,
  );
}

/** A coil pulls while one end is fed and the other grounded; one whose ground nobody has drawn, while it is fed. */
function pulledIn(feeds: Found, returnsAt: () => Found): PulledBy {
  return ([one, other]) => {
    const returns = returnsAt();
    const grounds = [returns[one] ?? NOTHING, returns[other] ?? NOTHING] as const;
    const drawn = grounds.some(({ live }) => live !== 0);
    const through = (from: number, to: Summary, key: keyof Summary): number =>
      ((feeds[from] ?? NOTHING)[key] & (drawn ? to[key] : ~0)) >>> 0;
    return {
      live: through(one, grounds[1], "live") | through(other, grounds[0], "live"),
      unattended: through(one, grounds[1], "unattended") | through(other, grounds[0], "unattended"),
    };
  };
}

/** Giving contacts in the order of their designations: see `waysOf`. */
function sourcesOf(points: Points, isSource: (point: Point) => boolean): readonly Point[] {
  return points.all
    .filter((point) => point.direction === "gives" && isSource(point))
    .sort((a, b) => compareText(a.part.designation, b.part.designation));
}

/** When a giving contact stands at supply voltage. */
function statesOf(point: Point): number {
  if (isGround(point.means.id)) return 0;
  if (point.means.liveIn.length) return bits(point.means.liveIn);
  return point.means.active === "supply" ? bits(["at-times"]) : 0;
}

/** Which circuits reach the frame or the battery's minus: `unattended` without a switch that somebody works. */
export function groundsOf(
  harness: Pick<Harness, "parts">,
  points: Points,
  feedsAt: () => Reach = () => feedsOf(harness, points),
): Reach {
  const sources = sourcesOf(points, (point) => isGround(point.means.id));
  const ways = groundWays(harness, points);
  const pulledBy: PulledBy = (coil) => {
    const pulled = feedsAt().pulled(coil);
    // Of a coil that nothing drives on the drawing, something not drawn may close the contact.
    return pulled.live ? pulled : { live: bits(STATES), unattended: 0 };
  };
  return walk(
    points,
    ways,
    sources,
    () => bits(STATES),
    () => pulledBy,
  );
}

function walk(
  points: Points,
  ways: Ways,
  sources: readonly Point[],
  states: (source: Point) => number,
  pulledBy: (known: Found) => PulledBy,
): Reach {
  let found: Found = [];
  // A relay passes on what its coil learned in the round before; chains of relays need a round each.
  for (let round = 0, rounds = hasRelay(ways) ? 6 : 1; round < rounds; round++) {
    const before = found;
    found = spread(points, ways, sources, states, pulledBy(before));
    if (sameStates(before, found)) break;
  }
  const named = new Map<number, readonly Feed[]>();
  const at = (circuit: PointCircuit): Summary => found[circuit.circuit.id] ?? NOTHING;
  return {
    feeds: (circuit) => {
      const id = circuit.circuit.id;
      let feeds = named.get(id);
      if (!feeds) {
        feeds = (found[id]?.arrivals ?? []).map(toFeed).sort(worstFirst);
        named.set(id, feeds);
      }
      return feeds;
    },
    liveAt: (circuit) => statesIn(at(circuit).live),
    unattendedAt: (circuit) => statesIn(at(circuit).unattended),
    isLive: (circuit) => at(circuit).live !== 0,
    pulled: pulledBy(found),
  };
}

const NOTHING: Summary = { live: 0, unattended: 0 };

function hasRelay(ways: Ways): boolean {
  return ways.some((list) => list?.some(({ gate }) => gate.kind === "make" || gate.kind === "rest"));
}

/** What has arrived at each circuit, by its id. */
type Found = (Arrived | undefined)[];
type Arrived = { live: number; unattended: number; arrivals: Arrival[] };

function spread(
  points: Points,
  ways: Ways,
  sources: readonly Point[],
  states: (source: Point) => number,
  pulledBy: PulledBy,
): Found {
  const found: Found = new Array(points.circuits.length);
  const arrive = (circuit: number, news: Arrival): boolean => {
    let here = found[circuit];
    if (!here) {
      here = { live: 0, unattended: 0, arrivals: [] };
      found[circuit] = here;
    }
    const grew =
      ((here.live | news.live) ^ here.live) | ((here.unattended | news.unattended) ^ here.unattended);
    here.live |= news.live;
    here.unattended |= news.unattended;
    const known = here.arrivals.find((arrival) => arrival.source === news.source);
    if (!known) {
      if (here.arrivals.length >= MOST_FEEDS) return grew !== 0;
      here.arrivals.push({ ...news });
      return true;
    }
    const better = news.unfused && !known.unfused;
    const more =
      (known.live | news.live) !== known.live || (known.unattended | news.unattended) !== known.unattended;
    known.live |= news.live;
    known.unattended |= news.unattended;
    if (better) {
      known.unfused = true;
      known.fuses = [];
    }
    return better || more;
  };
  const queue: { circuit: number; news: Arrival }[] = [];
  for (const source of sources) {
    const mask = states(source);
    const news: Arrival = { source, live: mask, unattended: mask, unfused: true, fuses: [] };
    const circuit = points.circuitOf(source).circuit.id;
    if (arrive(circuit, news) && ways[circuit]) queue.push({ circuit, news });
  }
  for (let next = 0; next < queue.length; next++) {
    const { circuit, news } = queue[next]!;
    for (const { to, gate } of ways[circuit] ?? []) {
      const left = pass(gate, news, pulledBy);
      if (!left.live) continue;
      const onward: Arrival =
        gate.kind === "fuse"
          ? { source: news.source, ...left, unfused: false, fuses: [...news.fuses, gate.fuse] }
          : { source: news.source, ...left, unfused: news.unfused, fuses: news.fuses };
      if (arrive(to, onward)) queue.push({ circuit: to, news: onward });
    }
  }
  return found;
}

function sameStates(before: Found, after: Found): boolean {
  for (let circuit = 0; circuit < after.length; circuit++) {
    const [one, other] = [after[circuit], before[circuit]];
    if (one?.live !== other?.live || one?.unattended !== other?.unattended) return false;
  }
  return true;
}

function toFeed(arrival: Arrival): Feed {
  const behind = arrival.source.contact.cavity?.fuse_A;
  const bare = arrival.source.part.kind === "supply" || behind === null;
  const protection =
    arrival.fuses.length > 0 ? "fuse" : bare ? "none" : typeof behind === "number" ? "far-side" : "unknown";
  return {
    source: arrival.source,
    live: statesIn(arrival.live),
    unattended: statesIn(arrival.unattended),
    fuses: arrival.fuses,
    protection,
  };
}

/** What nothing protects before what a fuse does; what is live longer before what is live at times. */
function worstFirst(a: Feed, b: Feed): number {
  const bare = (feed: Feed) => (feed.protection === "none" ? 0 : 1);
  return (
    bare(a) - bare(b) ||
    b.live.length - a.live.length ||
    compareText(a.source.part.designation, b.source.part.designation) ||
    a.source.contact.number - b.source.contact.number
  );
}

function statesIn(mask: number): readonly ReachState[] {
  return STATES.filter((_, index) => mask & (1 << index));
}
