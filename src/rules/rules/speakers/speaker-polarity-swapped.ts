import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, type Found } from "../../rule.ts";
import { byPlace, channelCount, type Driven } from "../../speakers.ts";
import { exchangeFix } from "../../swap.ts";
import { nameOf, sayList, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "speaker-polarity-swapped",
    group: "speakers",
    severity: "weak",
    summary: "Each speaker's plus is on the plus of its output, or every channel is reversed alike.",
    source: "common practice, no source; that all channels reversed alike cannot be heard: from memory",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
  },
  *check(context) {
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
    for (const [unit, { swapped, straight }] of bySource) {
      const alike = straight === 0 && (swapped.length > 1 || channelCount(context, unit) === 1);
      if (alike) yield allReversed(swapped.sort(byPlace));
      else for (const driven of swapped) yield oneReversed(context, driven);
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

function allReversed(swapped: readonly Driven[]): Found {
  const names = sayList(swapped.map(({ pair }) => pair.plus.means.name.replace(/^speaker (.*) \+$/, "$1")));
  return {
    severity: "tidy",
    message: `Every speaker is reversed: ${names}.`,
    consequence: "Nothing that can be heard, as long as all of them stay alike.",
    remedy: "Leave it, or put it straight when the harness is next apart.",
    about: swapped.flatMap(({ pair }) => [pair.plus.at, pair.minus.at]),
  };
}
