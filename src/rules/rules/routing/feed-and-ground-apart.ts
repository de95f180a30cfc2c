import { digits } from "../../../electrical/figure.ts";
import type { Point } from "../../../electrical/points.ts";
import type { RunId } from "../../../graph/harness.ts";
import type { Context, Unit } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, type Found } from "../../rule.ts";
import { runNames } from "../../shared/joints.ts";
import { sumOfRuns, wiresOnward } from "../../shared/lead-runs.ts";
import { byName, sayList, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "feed-and-ground-apart",
    group: "routing",
    severity: "weak",
    summary: "Feed and ground of a unit travel side by side.",
    source: "FCS 1362:2010 §4.6.2; the length is a threshold of our own",
    reads: [...CIRCUITS, ...NAMES, "runs", "settings"],
    fixable: false,
  },
  *check(context) {
    if (Object.keys(context.harness.runs).length < 2) return;
    for (const unit of context.newUnits) {
      const found = judge(context, unit);
      if (found) yield found;
    }
  },
});

type Way = { readonly point: Point; readonly runs: ReadonlySet<RunId> };

function waysOf(context: Context, points: readonly Point[]): readonly Way[] {
  return [...points].sort(byName).flatMap((point) => {
    const runs = new Set(wiresOnward(context, point.landings).flatMap((wire) => wire.runs));
    return runs.size ? [{ point, runs }] : [];
  });
}

function judge(context: Context, { points }: Unit): Found | null {
  const feeds = waysOf(
    context,
    points.filter(({ means, direction }) => means.group === "feed" && direction === "takes"),
  );
  if (!feeds.length) return null;
  const grounds = waysOf(
    context,
    points.filter(({ means, direction }) => means.id === "ground" && direction === "takes"),
  );
  const { value, book } = context.profile.limits.feedsApart_m;
  let worst: { feed: Way; ground: Way; apart_m: number } | null = null;
  for (const feed of feeds) {
    // Of several grounds the one that stays closest counts.
    let nearest: { ground: Way; apart_m: number } | null = null;
    for (const ground of grounds) {
      const apart_m = apartOf(context, feed, ground);
      if (!nearest || apart_m < nearest.apart_m) nearest = { ground, apart_m };
    }
    if (nearest && nearest.apart_m > (worst?.apart_m ?? value + 1e-9)) worst = { feed, ...nearest };
  }
  if (!worst) return null;
  const { feed, ground, apart_m } = worst;
  return {
    message: `${sayPoint(context, feed.point)} lies in ${sayRuns(context, feed)} and ${sayPoint(context, ground.point)} in ${sayRuns(context, ground)}: they are apart for ${digits(apart_m)} m, and ${digits(value)} m is the most (${book}).`,
    consequence: "Between the two they make a loop that picks up noise, and sends out its own.",
    remedy: "Lay both leads in one run, or take the ground to a stud close to the unit.",
    about: [feed.point.at, ground.point.at],
  };
}

/** The length for which each goes where the other does not: a short lead to the nearest stud is no loop. */
function apartOf({ harness }: Context, feed: Way, ground: Way): number {
  const alone = (own: Way, other: Way) =>
    sumOfRuns(
      harness,
      [...own.runs].filter((id) => !other.runs.has(id)),
    ).sum_m;
  return Math.min(alone(feed, ground), alone(ground, feed));
}

function sayRuns(context: Context, { runs }: Way): string {
  return sayList(runNames(context, [...runs]));
}
