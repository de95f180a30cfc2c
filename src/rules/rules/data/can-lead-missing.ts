import type { Point } from "../../../electrical/points.ts";
import { join } from "../../../graph/edits/join.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, type Fix, fixWith } from "../../rule.ts";
import { isCan, isHigh, lineOf, otherHalves } from "../../shared/data-lines.ts";
import { byName, nameOf, sayPoint, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "can-lead-missing",
    group: "data",
    severity: "fault",
    summary: "Of a CAN pair both leads are joined, or neither.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
    brings: ["required-lead-missing", "same-function-unjoined", "loose-lead", "spare-not-capped"],
  },
  *check(context) {
    const told = new Set<Point>();
    const leads = context.withFunction("can-high", "can-low", "second-can-high", "second-can-low");
    // From the new equipment first: that is where the missing lead has to go.
    const order = (point: Point) => (point.side === "equipment" ? 0 : 1);
    for (const joined of [...leads].sort((a, b) => order(a) - order(b) || byName(a, b))) {
      const far = partnersOf(context, joined);
      if (!far.length) continue;
      const halves = otherHalves(context, joined);
      if (!halves.length || halves.some((half) => isJoined(context, half))) continue;
      const open = halves.filter((half) => !context.isLeftOut(half) && !told.has(half)).sort(byName);
      const [own] = open;
      if (!own) continue;
      const others = far
        .flatMap((point) => otherHalves(context, point))
        .filter((half) => !isJoined(context, half) && !context.isLeftOut(half));
      for (const half of [...open, ...others]) told.add(half);
      yield {
        message: `${sayPoint(context, own)} reaches no bus, while ${sayPoint(context, joined)} is joined to ${sayPoints(context, far)}.`,
        consequence:
          "A bus that needs both leads carries nothing, or so much noise that messages are lost now and then.",
        remedy: others.length
          ? `Join it to ${sayPoints(context, others)}, twisted with the other lead.`
          : `Bring the ${isHigh(own) ? "high" : "low"} lead of the same bus to it, twisted with the other lead.`,
        about: [own.at, ...others.map((half) => half.at)],
        fix: joinFix(context, own, others),
      };
    }
  },
});

/** Leads of the same half on other boxes that it is joined to. */
function partnersOf(context: Context, point: Point): readonly Point[] {
  const { half } = lineOf(point)!;
  return context
    .circuitOf(point)
    .points.filter((other) => other.unit !== point.unit && isCan(other) && lineOf(other)?.half === half);
}

/** Joined to whatever other box: what it is wrongly joined to, other rules tell. */
function isJoined(context: Context, point: Point): boolean {
  return context
    .circuitOf(point)
    .points.some((other) => other.unit !== null && other.unit !== point.unit && other.means.group !== "none");
}

function joinFix(context: Context, own: Point, others: readonly Point[]): Fix | null {
  const [other, second] = others;
  if (!other || second) return null;
  const isFree = (point: Point) =>
    context.isAlone(point) && !context.circuitOf(point).caps.length && !context.hasLooseWire(point);
  if (!isFree(own) || !isFree(other)) return null;
  return fixWith(`Join ${nameOf(own)} to ${nameOf(other)}`, () => join(context.harness, own.at, other.at));
}
