import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, type Found } from "../../rule.ts";
import { type Driven, reversalsOf } from "../../shared/speakers.ts";
import { exchangeFix } from "../../shared/swap.ts";
import { nameOf, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "speaker-polarity-swapped",
    group: "speakers",
    severity: "weak",
    summary: "Each speaker's plus is on the plus of its output, as that of the others is.",
    source: "carstereo.com, Check speaker polarity; an instrument-amplifier maker's page on polarity",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
  },
  *check(context) {
    for (const { swapped, isAlike } of reversalsOf(context)) {
      if (!isAlike) for (const driven of swapped) yield oneReversed(context, driven);
    }
  },
});

function oneReversed(context: Context, { pair, plusFrom, minusFrom }: Driven): Found {
  return {
    message: `A speaker pair is reversed: ${sayPoint(context, pair.plus)} is joined to ${sayPoint(context, plusFrom)}, and ${sayPoint(context, pair.minus)} to ${sayPoint(context, minusFrom)}.`,
    consequence:
      "This speaker moves in while the others move out: the bass thins and voices lose their place.",
    remedy: `Exchange the leads of ${nameOf(pair.plus)} and ${nameOf(pair.minus)}.`,
    about: [pair.plus.at, pair.minus.at],
    fix: exchangeFix(context, pair.plus, pair.minus),
  };
}
