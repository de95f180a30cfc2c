import { type Point, type PointCircuit, type Points, pointsOf } from "../electrical/points.ts";
import { feedsOf, groundsOf, type Reach } from "../electrical/reach.ts";
import { type Ways, waysOf } from "../electrical/ways.ts";
import type { Harness } from "../graph/harness.ts";
import type { Traced } from "../graph/trace.ts";

/**
 * What can be said of a harness from its wiring alone: what is joined, what feeds what, what is grounded. Each look-up
 * is made once, when somebody first asks for it.
 */
export class Look {
  private madePoints: Points | null = null;
  private madeFeeds: Reach | null = null;
  private madeGrounds: Reach | null = null;
  private madeWays: Ways | null = null;

  constructor(
    readonly harness: Harness,
    readonly traced: Traced,
  ) {}

  get points(): Points {
    this.madePoints ??= pointsOf(this.harness, this.traced);
    return this.madePoints;
  }

  /** Which supplies and giving contacts feed a circuit, in which states, through which fuses. */
  get feeds(): Reach {
    this.madeFeeds ??= feedsOf(this.harness, this.points, this.ways);
    return this.madeFeeds;
  }

  /** Which circuits reach the frame or the battery's minus. */
  get grounds(): Reach {
    this.madeGrounds ??= groundsOf(this.harness, this.points, () => this.feeds);
    return this.madeGrounds;
  }

  get ways(): Ways {
    this.madeWays ??= waysOf(this.harness, this.points, false);
    return this.madeWays;
  }

  circuitOf(point: Point): PointCircuit {
    return this.points.circuitOf(point);
  }
}

const remembered = new WeakMap<Traced, Look>();

/** The look of a traced harness; the same two objects give the same one. */
export function lookAt(harness: Harness, traced: Traced): Look {
  const known = remembered.get(traced);
  if (known?.harness === harness) return known;
  const made = new Look(harness, traced);
  remembered.set(traced, made);
  return made;
}
