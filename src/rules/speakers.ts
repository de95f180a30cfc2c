import type { Channel } from "../catalogue/functions.ts";
import type { Point } from "../electrical/points.ts";
import type { Context } from "./context.ts";
import { byName } from "./words.ts";

/** The two leads of one channel of one box. */
export type Pair = {
  readonly unit: string;
  readonly channel: Channel;
  readonly plus: Point;
  readonly minus: Point;
};

/** A speaker, an input or a vehicle's pair of leads, and the outputs that its two leads are joined to. */
export type Driven = { readonly pair: Pair; readonly plusFrom: Point; readonly minusFrom: Point };

/** True where the chart says that the box's negatives are one; a box of which nothing is said is bridged. */
export function hasCommonNegative(context: Context, point: Point): boolean {
  const outputs = context.moduleOf(point)?.outputs;
  return outputs === "common-negative" || outputs === "none";
}

function isSpeaker(point: Point): boolean {
  return point.means.group === "speaker" && point.means.channel !== null;
}

/** Pairs of leads that are not outputs, both of whose leads are joined to some output of another box. */
export function drivenPairs(context: Context): readonly Driven[] {
  const driven: Driven[] = [];
  for (const [unit, points] of context.points.byUnit) {
    const minuses = new Map<Channel, Point[]>();
    const pluses: Point[] = [];
    for (const point of points) {
      if (!isSpeaker(point) || point.direction === "gives") continue;
      const channel = point.means.channel!;
      if (point.means.polarity === "plus") pluses.push(point);
      else minuses.set(channel, [...(minuses.get(channel) ?? []), point]);
    }
    for (const plus of pluses.sort(byName)) {
      const channel = plus.means.channel!;
      // A box with a channel on two connectors has two pairs; they go together in order.
      const minus = minuses.get(channel)?.sort(byName).shift();
      const plusFrom = minus && outputAt(context, plus);
      const minusFrom = minus && outputAt(context, minus);
      if (minus && plusFrom && minusFrom) {
        driven.push({ pair: { unit, channel, plus, minus }, plusFrom, minusFrom });
      }
    }
  }
  return driven.sort((a, b) => byName(a.pair.plus, b.pair.plus));
}

/** The output that drives a contact; none where several do, which other rules tell. */
function outputAt(context: Context, point: Point): Point | null {
  const outputs = context.points
    .partners(point)
    .filter((other) => isSpeaker(other) && other.direction === "gives" && other.unit !== point.unit);
  const [first] = outputs;
  return first && outputs.every((other) => other.means === first.means && other.unit === first.unit)
    ? first
    : null;
}

/** How many channels a box's chart gives. */
export function channelCount(context: Context, unit: string): number {
  const points = context.points.byUnit.get(unit) ?? [];
  return new Set(points.filter((point) => isSpeaker(point)).map((point) => point.means.channel)).size;
}

const SEATED: ReadonlySet<Channel> = new Set(["front-left", "front-right", "rear-left", "rear-right"]);

/** A channel that has a side and an axle; a centre or subwoofer may be driven from anywhere. */
export function isSeated(channel: Channel | null): boolean {
  return channel !== null && SEATED.has(channel);
}
