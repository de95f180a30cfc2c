import { digits } from "../../electrical/figure.ts";
import { type Channel, channelsOf } from "../../electrical/operate/channels.ts";
import type { Point } from "../../electrical/points.ts";
import { USUAL_LEAST_LOAD_ohm } from "../../electrical/speaker/channel.ts";
import type { Speaker } from "../../graph/harness.ts";
import type { Context } from "../context.ts";
import type { About } from "../rule.ts";
import { compareNames, sayList, sayPoint } from "../words.ts";
import { isSpeaker } from "./speakers.ts";

/** A channel that its speakers load with less than its unit allows. */
export type LowLoad = {
  readonly channel: Channel;
  readonly speakers: readonly Speaker[];
  readonly seen_ohm: number;
  readonly least_ohm: number;
  /** Whether the unit's own sheet says the least load. */
  readonly isStated: boolean;
  /** Of two bridged channels: the least load is told for one of them, and each sees half. */
  readonly isForChannel: boolean;
  readonly about: readonly About[];
};

const remembered = new WeakMap<Context, readonly LowLoad[]>();

/** Channels with too low a load, by speakers of which the impedance is stated. Solved only where it may be so. */
export function lowLoads(context: Context): readonly LowLoad[] {
  let known = remembered.get(context);
  if (!known) {
    known = mayBeLow(context) ? find(context) : [];
    remembered.set(context, known);
  }
  return known;
}

function find(context: Context): readonly LowLoad[] {
  const channels = channelsOf(context.harness, context.traced);
  const boxOf = ({ plus }: Channel) => {
    const point = context.points.pointAt(plus.part, plus.contact);
    return point ? context.moduleOf(point) : null;
  };
  // Where a box drives speakers on single channels as well, its least load is that of a channel.
  const single = new Set(channels.flatMap((one) => (one.load && !one.isPair ? [boxOf(one)] : [])));
  return channels.flatMap((channel): LowLoad[] => {
    if (!channel.load) return [];
    const box = boxOf(channel);
    const isStated = box !== null && box.leastLoad_ohm !== "unknown";
    const factor = channel.isPair && isStated && single.has(box) ? 2 : 1;
    const least_ohm = leastOf(box, channel.isPair) * factor;
    if (channel.load.seen.value >= least_ohm * (1 - 1e-9)) return [];
    const speakers = channel.speakers
      .map(({ speaker }) => context.harness.parts[speaker] as Speaker)
      .sort((a, b) => compareNames(a.designation, b.designation));
    if (speakers.some(({ impedance_ohm }) => impedance_ohm === "unknown")) return [];
    const about = [channel.plus, channel.minus, ...speakers.map(({ id }) => ({ part: id }))];
    return [
      {
        channel,
        speakers,
        seen_ohm: channel.load.seen.value,
        least_ohm: least_ohm / factor,
        isStated,
        isForChannel: factor === 2,
        about,
      },
    ];
  });
}

function leastOf(box: ReturnType<Context["moduleOf"]>, isPair: boolean): number {
  if (box && box.leastLoad_ohm !== "unknown") return box.leastLoad_ohm;
  if (isPair) return USUAL_LEAST_LOAD_ohm.bridged;
  return box?.role === "amplifier" ? USUAL_LEAST_LOAD_ohm.amplifier : USUAL_LEAST_LOAD_ohm.headUnit;
}

/**
 * Whether some channel may be below its least: all its current goes through the speakers on its plus, so that
 * it sees no less than those in parallel.
 */
function mayBeLow(context: Context): boolean {
  const siemens = new Map<number, number>();
  for (const part of context.parts) {
    if (part.kind !== "speaker" || part.impedance_ohm === "unknown") continue;
    for (const contact of [1, 2]) {
      const { id } = context.points.circuitAt(part.id, contact).circuit;
      siemens.set(id, (siemens.get(id) ?? 0) + 1 / part.impedance_ohm);
    }
  }
  if (!siemens.size) return false;
  const hangsOn = (point: Point) => siemens.get(context.circuitOf(point).circuit.id) ?? 0;
  for (const points of context.points.byFunction.values()) {
    if (points[0]!.means.group !== "speaker" || points[0]!.means.polarity !== "plus") continue;
    for (const plus of points) {
      if (plus.direction !== "gives" || !isSpeaker(plus)) continue;
      const box = context.moduleOf(plus);
      // Twice a stated load: it may be told for one of two bridged channels.
      const least_ohm = leastOf(box, true) * (box && box.leastLoad_ohm !== "unknown" ? 2 : 1);
      const single_ohm = leastOf(box, false);
      const load = hangsOn(plus);
      if (load > (1 / single_ohm) * (1 + 1e-9)) return true;
      if (load > (1 / least_ohm) * (1 + 1e-9) && !hangsAlone(context, plus, siemens)) return true;
    }
  }
  return false;
}

/** What hangs on a plus hangs on its own minus as well: then the two channels are not bridged. */
function hangsAlone(context: Context, plus: Point, siemens: ReadonlyMap<number, number>): boolean {
  const own = plus.unit === null ? [] : (context.points.byUnit.get(plus.unit) ?? []);
  return own.some(
    (point) =>
      point.means.channel === plus.means.channel &&
      point.means.polarity === "minus" &&
      siemens.has(context.circuitOf(point).circuit.id),
  );
}

/** "P1 and P2 load A2.1+ speaker front left + with 2 Ω; its sheet allows no less than 4 Ω." */
export function sayLoad(
  context: Context,
  { channel, speakers, seen_ohm, least_ohm, isStated, isForChannel }: LowLoad,
): string {
  const plus = context.points.pointAt(channel.plus.part, channel.plus.contact);
  const minus = context.points.pointAt(channel.minus.part, channel.minus.contact);
  const names = sayList(speakers.map(({ designation }) => designation));
  const at = plus ? sayPoint(context, plus) : channel.name;
  const bridge = channel.isPair && minus ? ` and ${sayPoint(context, minus)}` : "";
  const half = channel.isPair ? `, ${digits(seen_ohm / 2)} Ω for each of the two channels` : "";
  const limit = isStated
    ? `its sheet allows no less than ${digits(least_ohm)} Ω${isForChannel ? " on a channel" : ""}`
    : `its sheet names no least load, and ${digits(least_ohm)} Ω is usual (common practice, no source)`;
  return `${names} ${speakers.length === 1 ? "loads" : "load"} ${at}${bridge} with ${digits(seen_ohm)} Ω${half}; ${limit}.`;
}
