import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, type Fix, type Found } from "../../rule.ts";
import { byPlace, type Driven, isSeated } from "../../speakers.ts";
import { exchangeAll, exchangeFix } from "../../swap.ts";
import { nameOf, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "speakers-crossed",
    group: "speakers",
    severity: "fault",
    summary: "Both leads of a speaker come from one channel, the one that is named for its place.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
  },
  *check(context) {
    const told = new Set<Driven>();
    const amiss = context.driven.filter((driven) => isSplit(driven) || isAstray(driven)).sort(byPlace);
    for (const all of byOutputUnit(amiss)) {
      for (const driven of all) {
        if (told.has(driven)) continue;
        told.add(driven);
        if (isSplit(driven)) {
          const partner = all.find((other) => !told.has(other) && isSplitAgainst(driven, other));
          if (partner) told.add(partner);
          yield splitPair(context, driven, partner);
        } else if (isAstray(driven) && !isTweeterOfSide(driven)) {
          const partner = all.find((other) => !told.has(other) && isExchangedWith(driven, other));
          if (partner) told.add(partner);
          yield wholePairs(context, driven, partner);
        }
      }
    }
  },
});

/** Speakers of one receiver or amplifier together: only they can have been exchanged with each other. */
function byOutputUnit(all: readonly Driven[]): Iterable<readonly Driven[]> {
  const groups = new Map<string | null, Driven[]>();
  for (const driven of all) {
    const group = groups.get(driven.plusFrom.unit);
    if (group) group.push(driven);
    else groups.set(driven.plusFrom.unit, [driven]);
  }
  return groups.values();
}

function isSplit({ plusFrom, minusFrom }: Driven): boolean {
  return plusFrom.means.channel !== minusFrom.means.channel || plusFrom.unit !== minusFrom.unit;
}

function isAstray({ pair, plusFrom }: Driven): boolean {
  const from = plusFrom.means.channel;
  return from !== pair.channel && isSeated(from) && isSeated(pair.channel);
}

/** The other speaker gets the halves that this one lacks. */
function isSplitAgainst(a: Driven, b: Driven): boolean {
  return (
    isSplit(b) &&
    a.plusFrom.means.channel === b.minusFrom.means.channel &&
    b.plusFrom.means.channel === a.minusFrom.means.channel
  );
}

/** Of one box, or two speakers; each driven whole by the channel that is named for the other. */
function isExchangedWith(a: Driven, b: Driven): boolean {
  const together =
    a.pair.unit === b.pair.unit ||
    (a.pair.plus.part.kind === "speaker" && b.pair.plus.part.kind === "speaker");
  return (
    together &&
    !isSplit(b) &&
    a.plusFrom.means.channel === b.pair.channel &&
    b.plusFrom.means.channel === a.pair.channel
  );
}

/** Rear outputs may drive a front tweeter on purpose, as long as they stay on their side. */
function isTweeterOfSide({ pair, plusFrom }: Driven): boolean {
  const { part } = pair.plus;
  const sideOf = (channel: string | null) => channel?.split("-")[1];
  return (
    part.kind === "speaker" &&
    part.type === "tweeter" &&
    sideOf(pair.channel) === sideOf(plusFrom.means.channel)
  );
}

function splitPair(context: Context, driven: Driven, partner: Driven | undefined): Found {
  const { pair, plusFrom, minusFrom } = driven;
  return {
    message: `${nameOf(pair.plus)} and ${nameOf(pair.minus)} belong to one speaker and come from two channels: ${sayPoint(context, plusFrom)} and ${sayPoint(context, minusFrom)}.`,
    consequence:
      "It plays only what the two channels differ in, hollow and without voices, or two output stages fight.",
    remedy: "Take the leads pair by pair: both leads of each speaker to the two leads of one output.",
    about: [driven, ...(partner ? [partner] : [])].flatMap((one) => [one.pair.plus.at, one.pair.minus.at]),
    fix: partner ? unsplit(context, driven, partner) : null,
  };
}

/** The one half to exchange so that every channel ends at the speaker that bears its name. */
function unsplit(context: Context, a: Driven, b: Driven): Fix | null {
  const upright = [a, b].every(
    ({ plusFrom, minusFrom }) => plusFrom.means.polarity === "plus" && minusFrom.means.polarity === "minus",
  );
  if (!upright) return null;
  if (a.plusFrom.means.channel === a.pair.channel && b.plusFrom.means.channel === b.pair.channel)
    return exchangeFix(context, a.pair.minus, b.pair.minus);
  if (a.minusFrom.means.channel === a.pair.channel && b.minusFrom.means.channel === b.pair.channel)
    return exchangeFix(context, a.pair.plus, b.pair.plus);
  return null;
}

function wholePairs(context: Context, driven: Driven, partner: Driven | undefined): Found {
  const words = (name: string | null) => (name ?? "").replace("-", " ");
  const from = driven.plusFrom.means.channel;
  const both = [driven, ...(partner ? [partner] : [])];
  const fix = partner
    ? exchangeAll(
        context,
        [
          [driven.pair.plus, partner.pair.plus],
          [driven.pair.minus, partner.pair.minus],
        ],
        `Exchange the pairs of ${words(driven.pair.channel)} and ${words(partner.pair.channel)}`,
      )
    : null;
  return {
    severity: "weak",
    message: partner
      ? `The pairs of ${words(driven.pair.channel)} and ${words(from)} are exchanged, at ${nameOf(driven.pair.plus)} and ${nameOf(partner.pair.plus)}.`
      : `${sayPoint(context, driven.pair.plus)} and its other lead are driven by the ${words(from)} output.`,
    consequence: "Balance or fader work backwards; warnings and spoken directions come from the wrong seat.",
    remedy: "Exchange whole pairs, never single leads.",
    about: both.flatMap(({ pair }) => [pair.plus.at, pair.minus.at]),
    fix,
  };
}
