import type { Channel } from "../../catalogue/functions.ts";
import type { Context } from "../context.ts";
import type { Found } from "../rule.ts";
import { nameOf, sayPoint } from "../words.ts";
import { byPlace, type Driven, isSeated, isSpeaker } from "./speakers.ts";
import { exchangeAll } from "./swap.ts";

/** A speaker whose whole pair comes from a channel of another place, and the one it was exchanged with. */
export type Astray = {
  readonly driven: Driven;
  readonly partner: Driven | null;
  /** Where the side differs, the axle is no news. */
  readonly amiss: "side" | "axle";
};

/** Its two leads come from two channels, or from two boxes. */
export function isSplit({ plusFrom, minusFrom }: Driven): boolean {
  return plusFrom.means.channel !== minusFrom.means.channel || plusFrom.unit !== minusFrom.unit;
}

/** Speakers of one receiver or amplifier together: only they can have been exchanged with each other. */
export function byOutputUnit(all: readonly Driven[]): Iterable<readonly Driven[]> {
  const groups = new Map<string | null, Driven[]>();
  for (const driven of all) {
    const group = groups.get(driven.plusFrom.unit);
    if (group) group.push(driven);
    else groups.set(driven.plusFrom.unit, [driven]);
  }
  return groups.values();
}

/** Speakers that play what is meant for another seat, each told once. */
export function astrayPairs(context: Context): readonly Astray[] {
  const found: Astray[] = [];
  const told = new Set<Driven>();
  const strays = context.driven
    .filter((driven) => !isSplit(driven) && amissOf(context, driven))
    .sort(byPlace);
  for (const all of byOutputUnit(strays)) {
    for (const driven of all) {
      const amiss = amissOf(context, driven);
      if (told.has(driven) || !amiss) continue;
      told.add(driven);
      const partner = all.find((other) => !told.has(other) && isExchangedWith(driven, other)) ?? null;
      if (partner) told.add(partner);
      found.push({ driven, partner, amiss });
    }
  }
  return found;
}

function amissOf(context: Context, driven: Driven): Astray["amiss"] | null {
  const { pair, plusFrom } = driven;
  const from = plusFrom.means.channel;
  if (from === pair.channel || !isSeated(from) || !isSeated(pair.channel)) return null;
  const given = channelsGivenBy(context, driven);
  // A receiver for two channels drives front and rear alike; a mono one drives both sides.
  if (sideOf(from) !== sideOf(pair.channel))
    return given.some((one) => sideOf(one) === sideOf(pair.channel)) ? "side" : null;
  if (!given.some((one) => axleOf(one) === axleOf(pair.channel))) return null;
  return isTweeter(driven) ? null : "axle";
}

function channelsGivenBy(context: Context, { plusFrom }: Driven): readonly Channel[] {
  const own = plusFrom.unit === null ? [plusFrom] : (context.points.byUnit.get(plusFrom.unit) ?? []);
  return own.flatMap((point) =>
    isSpeaker(point) && point.direction === "gives" && point.means.channel ? [point.means.channel] : [],
  );
}

const axleOf = (channel: Channel | null) => channel?.split("-")[0];
const sideOf = (channel: Channel | null) => channel?.split("-")[1];

/** Rear outputs may drive a front tweeter on purpose, as long as they stay on their side. */
function isTweeter({ pair }: Driven): boolean {
  return pair.plus.part.kind === "speaker" && pair.plus.part.type === "tweeter";
}

/** Of one box, or two speakers; each driven whole by the channel that is named for the other. */
function isExchangedWith(a: Driven, b: Driven): boolean {
  const together =
    a.pair.unit === b.pair.unit ||
    (a.pair.plus.part.kind === "speaker" && b.pair.plus.part.kind === "speaker");
  return (
    together && a.plusFrom.means.channel === b.pair.channel && b.plusFrom.means.channel === a.pair.channel
  );
}

/** The finding for one of them; what follows from it is for the rule to say. */
export function tellAstray(context: Context, { driven, partner }: Astray, consequence: string): Found {
  const words = (name: string | null) => (name ?? "").replace("-", " ");
  const from = driven.plusFrom.means.channel;
  const own = words(driven.pair.channel);
  return {
    message: partner
      ? `The pairs of ${own} and ${words(from)} are exchanged, at ${nameOf(driven.pair.plus)} and ${nameOf(partner.pair.plus)}.`
      : `${sayPoint(context, driven.pair.plus)} and its other lead are driven by the ${words(from)} output.`,
    consequence,
    remedy: "Exchange whole pairs, never single leads.",
    about: [driven, ...(partner ? [partner] : [])].flatMap(({ pair }) => [pair.plus.at, pair.minus.at]),
    fix: partner
      ? exchangeAll(
          context,
          [
            [driven.pair.plus, partner.pair.plus],
            [driven.pair.minus, partner.pair.minus],
          ],
          `Exchange the pairs of ${own} and ${words(partner.pair.channel)}`,
        )
      : null,
  };
}
