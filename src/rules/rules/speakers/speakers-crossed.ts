import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, type Fix, type Found } from "../../rule.ts";
import { byOutputUnit, isSplit } from "../../shared/astray.ts";
import { byPlace, type Driven, isOpenForBridge } from "../../shared/speakers.ts";
import { exchangeFix } from "../../shared/swap.ts";
import { nameOf, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "speakers-crossed",
    group: "speakers",
    severity: "fault",
    summary: "Both leads of a speaker come from one channel.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
  },
  *check(context) {
    const told = new Set<Driven>();
    for (const all of byOutputUnit(
      context.driven.filter((driven) => isSplit(driven) && !isBridged(context, driven)).sort(byPlace),
    )) {
      for (const driven of all) {
        if (told.has(driven)) continue;
        told.add(driven);
        const partner = all.find((other) => !told.has(other) && isSplitAgainst(driven, other));
        if (partner) told.add(partner);
        yield splitPair(context, driven, partner);
      }
    }
  },
});

/** A speaker between two channels of an amplifier of which the other two halves stay open. */
function isBridged(context: Context, { plusFrom, minusFrom }: Driven): boolean {
  if (plusFrom.unit !== minusFrom.unit) return false;
  if (plusFrom.means.polarity === minusFrom.means.polarity) return false;
  const own = plusFrom.unit === null ? [] : (context.points.byUnit.get(plusFrom.unit) ?? []);
  const halves = own.filter(
    (point) =>
      point.direction === "gives" &&
      [plusFrom, minusFrom].some(
        (used) => used.means.channel === point.means.channel && used.means.polarity !== point.means.polarity,
      ),
  );
  return halves.length > 0 && halves.every((half) => isOpenForBridge(context, half) && context.isAlone(half));
}

/** The other speaker gets the halves that this one lacks. */
function isSplitAgainst(a: Driven, b: Driven): boolean {
  return (
    a.plusFrom.means.channel === b.minusFrom.means.channel &&
    b.plusFrom.means.channel === a.minusFrom.means.channel
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
