import type { Point } from "../../../electrical/points.ts";
import { join } from "../../../graph/edits/join.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, type Fix, fixWith } from "../../rule.ts";
import { otherHalf } from "../../shared/unjoined.ts";
import { byName, nameOf, sayPoint, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "required-lead-missing",
    group: "spares",
    severity: "fault",
    summary: "Every lead that a unit cannot do without is joined.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
  },
  *check(context) {
    const { required, spokenOf } = context.unjoined;
    for (const point of required) {
      // A pair that waits to be joined, and a loose end, are told by their own rules.
      if (spokenOf.has(point) || context.hasLooseWire(point)) continue;
      const half = otherHalf(point.means.id);
      const paired = half !== point.means.id;
      const sources = paired ? [] : sourcesOf(context, point);
      yield {
        message: `${sayPoint(context, point)} is joined to nothing${
          paired ? `, while the other half of its pair is` : ""
        }.`,
        consequence: paired
          ? "Half a pair carries nothing: this channel or this data line is dead."
          : consequenceOf(point),
        remedy: sources.length
          ? `Bring it from ${sayPoints(context, sources)}.`
          : paired
            ? "Join both halves, or neither."
            : "The charts show no lead that gives it: take it from the fuse box, behind a fuse, or from an interface module.",
        about: [point.at],
        fix: joinFix(context, point, sources),
      };
    }
  },
});

function consequenceOf(point: Point): string {
  switch (point.means.id) {
    case "constant-feed":
      return "The unit is dead, or forgets its clock and presets.";
    case "amplifier-turn-on":
      return "The amplifier never wakes.";
    default:
      return "The unit does not switch on.";
  }
}

/** Contacts of other boxes that give the same. */
function sourcesOf(context: Context, point: Point): readonly Point[] {
  return context
    .withFunction(point.means.id, ...(WOULD_DO[point.means.id] ?? []))
    .filter((other) => other.direction === "gives" && other.unit !== point.unit)
    .sort((a, b) => Number(b.means === point.means) - Number(a.means === point.means) || byName(a, b))
    .slice(0, 4);
}

/** A feed of the other kind that comes with the key serves too, if the chart has no better. */
const WOULD_DO: Readonly<Record<string, readonly string[]>> = {
  "switched-feed": ["ignition-feed"],
  "ignition-feed": ["switched-feed"],
};

/** Certain where one source gives it and nothing hangs on that source yet. */
function joinFix(context: Context, point: Point, sources: readonly Point[]): Fix | null {
  const [source, second] = sources;
  if (
    !source ||
    second ||
    source.means !== point.means ||
    context.points.wiresAt(source).length ||
    context.isLeftOut(source)
  )
    return null;
  if (context.points.wiresAt(point).length) return null;
  return fixWith(`Join ${nameOf(point)} to ${nameOf(source)}`, () =>
    join(context.harness, point.at, source.at),
  );
}
