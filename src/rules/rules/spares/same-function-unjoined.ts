import { join } from "../../../graph/edits/join.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, fixWith } from "../../rule.ts";
import { nameOf, sayPoint, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "same-function-unjoined",
    group: "spares",
    severity: "weak",
    summary: "What one chart gives and another takes is joined.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
  },
  *check(context) {
    for (const { point, others, certain } of context.unjoined.wanted) {
      const [other] = others;
      if (!other) continue;
      // A loose end says it itself, with the same cure.
      if (certain && (context.hasLooseWire(point) || context.hasLooseWire(other))) continue;
      const needed = context.unjoined.required.has(point);
      yield {
        severity: needed ? "fault" : "weak",
        message: `${sayPoint(context, point)} is not joined to ${sayPoints(context, others)}.`,
        consequence: needed
          ? "The unit cannot do without it."
          : `Without it, ${point.means.name} is missing: nobody notices until it is wanted.`,
        remedy: certain
          ? "Join the two, or mark the cavity as a spare and cap its lead."
          : "Join it to the one that is meant, or mark the cavity as a spare and cap its lead.",
        about: [point.at, ...others.map((one) => one.at)],
        fix: certain
          ? fixWith(`Join ${nameOf(point)} to ${nameOf(other)}`, () =>
              join(context.harness, point.at, other.at),
            )
          : null,
      };
    }
  },
});
