import type { Point } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, type Found } from "../../rule.ts";
import { inputsOf, returnsOf, reversedLeads } from "../../shared/reversed.ts";
import { exchangeFix } from "../../shared/swap.ts";
import { nameOf, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "supply-reversed",
    group: "feeds",
    severity: "danger",
    summary: "No feed input lies on the frame while its ground lies on a supply.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
  },
  *check(context) {
    for (const unit of context.newUnits) yield* judge(context, inputsOf(unit), returnsOf(unit));
    for (const part of context.parts) {
      if (part.kind !== "load" || !part.polarised) continue;
      const [plus, minus] = [1, 2].map((number) => context.points.pointAt(part.id, number));
      yield* judge(context, [plus!], [minus!]);
    }
  },
});

function* judge(context: Context, inputs: readonly Point[], returns: readonly Point[]): Iterable<Found> {
  const { grounded, fed } = reversedLeads(context, inputs, returns);
  const [feed, back] = [grounded[0], fed[0]];
  if (!feed || !back) return;
  const single = grounded.length === 1 && fed.length === 1;
  yield {
    message: `The supply is reversed: ${sayPoint(context, feed)} lies on ground, and ${sayPoint(context, back)} is fed.`,
    consequence: "The protective diode inside blows the fuse, or the unit dies.",
    remedy: `Exchange the leads of ${nameOf(feed)} and ${nameOf(back)}, renew the fuse, and find out whether the unit survived before it goes back in.`,
    about: [...grounded, ...fed].map((point) => point.at),
    fix: single ? exchangeFix(context, feed, back) : null,
  };
}
