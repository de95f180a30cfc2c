import type { Channel } from "../../catalogue/functions.ts";
import type { Point } from "../../electrical/points.ts";
import type { Context } from "../context.ts";
import { byName } from "../words.ts";

const CHANNELS: readonly Channel[] = [
  "front-left",
  "front-right",
  "rear-left",
  "rear-right",
  "centre",
  "subwoofer",
];

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

export function isSpeaker(point: Point): boolean {
  return point.means.group === "speaker" && point.means.channel !== null;
}

/** Every contact for a loudspeaker's lead: outputs, inputs and loudspeakers themselves. */
export function speakerPoints(context: Context): readonly Point[] {
  return CHANNELS.flatMap((channel) =>
    context.withFunction(`speaker-${channel}-plus`, `speaker-${channel}-minus`),
  );
}

/** The plus of a speaker, an input or a vehicle's pair, and its minus where its chart has one. */
export type HalfPair = Omit<Pair, "minus"> & { readonly minus: Point | null };

/** Leads that are not outputs, by their plus. */
export function takingPairs(context: Context): readonly HalfPair[] {
  const found: HalfPair[] = [];
  for (const channel of CHANNELS) {
    const pluses = context.points.byFunction.get(`speaker-${channel}-plus`);
    if (!pluses) continue;
    const minuses = context.points.byFunction.get(`speaker-${channel}-minus`) ?? [];
    const other = new Map<string, Point>();
    // The minus of the same connector is its pair; a box may have the channel on two of them.
    for (const minus of minuses) {
      if (minus.direction === "gives") continue;
      if (!other.has(minus.part.id)) other.set(minus.part.id, minus);
      if (minus.unit !== null && !other.has(minus.unit)) other.set(minus.unit, minus);
    }
    for (const plus of pluses) {
      if (plus.direction === "gives" || plus.unit === null) continue;
      const minus = other.get(plus.part.id) ?? other.get(plus.unit) ?? null;
      found.push({ unit: plus.unit, channel, plus, minus });
    }
  }
  return found;
}

/** Pairs of leads that are not outputs, both of whose leads are joined to some output of another box. */
export function drivenPairs(context: Context): readonly Driven[] {
  const driven: Driven[] = [];
  for (const { minus, ...pair } of takingPairs(context)) {
    const plusFrom = minus && outputAt(context, pair.plus);
    const minusFrom = minus && outputAt(context, minus);
    if (minus && plusFrom && minusFrom) driven.push({ pair: { ...pair, minus }, plusFrom, minusFrom });
  }
  return driven;
}

/** The output that drives a contact; none where several do, which other rules tell. */
export function outputAt(context: Context, point: Point): Point | null {
  let found: Point | null = null;
  for (const other of context.circuitOf(point).points) {
    if (!isSpeaker(other) || other.direction !== "gives" || other.unit === point.unit) continue;
    if (found && (found.means !== other.means || found.unit !== other.unit)) return null;
    found ??= other;
  }
  return found;
}

/** Channels of one output box that are reversed; `isAlike`: all that are joined are. */
export type Reversal = { readonly swapped: readonly Driven[]; readonly isAlike: boolean };

export function reversalsOf(context: Context): readonly Reversal[] {
  const bySource = new Map<string, { swapped: Driven[]; straight: number }>();
  for (const driven of context.driven) {
    const { plusFrom, minusFrom } = driven;
    if (plusFrom.means.channel !== minusFrom.means.channel || plusFrom.unit !== minusFrom.unit) continue;
    if (plusFrom.means.polarity === minusFrom.means.polarity) continue;
    const unit = plusFrom.unit ?? plusFrom.part.id;
    const group = bySource.get(unit) ?? { swapped: [], straight: 0 };
    bySource.set(unit, group);
    if (plusFrom.means.polarity === "minus") group.swapped.push(driven);
    else group.straight++;
  }
  return [...bySource].map(([unit, { swapped, straight }]) => ({
    swapped: swapped.sort(byPlace),
    isAlike: straight === 0 && (swapped.length > 1 || channelCount(context, unit) === 1),
  }));
}

/**
 * The output half that stays open where two channels of an amplifier are bridged: its other half drives a speaker
 * whose other lead comes back to another channel of the same box.
 */
export function isOpenForBridge(context: Context, half: Point): boolean {
  if (half.direction !== "gives" || !isSpeaker(half) || context.moduleOf(half)?.role !== "amplifier")
    return false;
  const own = half.unit === null ? [] : (context.points.byUnit.get(half.unit) ?? []);
  const partner = own.find(
    (point) => isSpeaker(point) && point.means.channel === half.means.channel && point.means !== half.means,
  );
  if (!partner) return false;
  return context.points.partners(partner).some(({ part, contact }) => {
    if (part.kind !== "speaker") return false;
    const far = context.points.circuitAt(part.id, 3 - contact.number).points;
    return far.some((point) => isSpeaker(point) && point.direction === "gives" && point.unit === half.unit);
  });
}

/** How many channels a box's chart gives. */
function channelCount(context: Context, unit: string): number {
  const points = context.points.byUnit.get(unit) ?? [];
  return new Set(points.filter((point) => isSpeaker(point)).map((point) => point.means.channel)).size;
}

const SEATED: ReadonlySet<Channel> = new Set(["front-left", "front-right", "rear-left", "rear-right"]);

/** A channel that has a side and an axle; a centre or subwoofer may be driven from anywhere. */
export function isSeated(channel: Channel | null): boolean {
  return channel !== null && SEATED.has(channel);
}

/** In the order in which a person reads designations. */
export function byPlace(a: Driven, b: Driven): number {
  return byName(a.pair.plus, b.pair.plus);
}
