import type { Point } from "../../electrical/points.ts";
import type { Context, Unit } from "../context.ts";
import { byName } from "../words.ts";

/**
 * What feeds an input: `constant` is live with the key off, `switched` comes with the key, `other` only in
 * another state (lights on); `by-hand` waits for a switch that somebody closes; `none` is not fed.
 */
export type FeedKind = "constant" | "switched" | "other" | "by-hand" | "none";

export type Input = { readonly point: Point; readonly fed: FeedKind };

/** The constant and switched inputs of a box, each with what feeds it. */
export type UnitFeeds = {
  readonly unit: Unit;
  readonly constant: readonly Input[];
  readonly switched: readonly Input[];
};

/** Feeds that come with the key. */
export const SWITCHED: ReadonlySet<string> = new Set(["switched-feed", "ignition-feed"]);

export function* unitFeeds(context: Context): Iterable<UnitFeeds> {
  for (const unit of context.newUnits) {
    const constant: Input[] = [];
    const switched: Input[] = [];
    for (const point of unit.points) {
      if (point.direction !== "takes") continue;
      if (point.means.id === "constant-feed") constant.push({ point, fed: kindOf(context, point) });
      else if (SWITCHED.has(point.means.id)) switched.push({ point, fed: kindOf(context, point) });
    }
    if (!constant.length && !switched.length) continue;
    constant.sort((a, b) => byName(a.point, b.point));
    switched.sort((a, b) => byName(a.point, b.point));
    yield { unit, constant, switched };
  }
}

function kindOf(context: Context, point: Point): FeedKind {
  const circuit = context.circuitOf(point);
  const steady = context.feeds.unattendedAt(circuit);
  if (steady.includes("off")) return "constant";
  if (steady.includes("accessory") || steady.includes("run")) return "switched";
  if (steady.length) return "other";
  return context.feeds.isLive(circuit) ? "by-hand" : "none";
}

/** Inputs that want a feed of a certain kind: those of boxes, and of loads that are no lamp, heater, motor or sounder. */
export function* wantedInputs(context: Context): Iterable<Input> {
  for (const { constant, switched } of unitFeeds(context)) {
    yield* constant;
    yield* switched;
  }
  for (const part of context.parts) {
    if (part.kind !== "load" || !SWITCHED.has(part.function) || MAY_DROP_OUT.has(part.type)) continue;
    const point = context.points.pointAt(part.id, 1);
    if (point) yield { point, fed: kindOf(context, point) };
  }
}

/** A heater or a lamp should fall out while the engine cranks. */
const MAY_DROP_OUT: ReadonlySet<string> = new Set(["lamp", "heater", "motor", "sounder"]);

const WITH_KEY = [...SWITCHED, "run-feed", "delayed-feed", "power-socket-feed"];

/** What gives a feed that comes with the key: the vehicle's leads, and outputs of interface modules. */
export function switchedSources(context: Context): readonly Point[] {
  return context.withFunction(...WITH_KEY).filter(({ direction }) => direction === "gives");
}
