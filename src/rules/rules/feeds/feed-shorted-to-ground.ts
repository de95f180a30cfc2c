import { FUNCTIONS, isGround } from "../../../catalogue/functions.ts";
import type { Point } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { byName, compareNames, isOrAre, sayGrounds, sayList, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "feed-shorted-to-ground",
    group: "feeds",
    severity: "danger",
    summary: "Nothing that gives supply voltage is in one circuit with the frame.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
  },
  *check(context) {
    const seen = new Set<number>();

    for (const ground of context.withFunction(...GROUNDS)) {
      if (ground.direction !== "gives") continue;
      const { id } = context.circuitOf(ground).circuit;
      if (seen.has(id)) continue;
      const { points, fuses } = withinFuses(context, id, seen);
      const gives = points.filter((point) => point.direction === "gives");
      const live = gives.filter(
        (point) =>
          !isGround(point.means.id) &&
          // What a receiver gives an antenna is little, and has a rule of its own.
          point.means.id !== "antenna-power" &&
          (point.means.liveIn.length > 0 || point.means.active === "supply"),
      );
      const grounds = gives.filter((point) => isGround(point.means.id));
      if (!live.length || !grounds.length) continue;
      live.sort(byName);
      grounds.sort(byName);
      yield {
        message: `${sayPoints(context, live)} ${isOrAre(live)} joined straight to ${sayGrounds(context, grounds)}${
          fuses.length ? `, through ${sayList(fuses)} and nothing that draws` : ""
        }.`,
        consequence: "A dead short: the fuse blows at once, or, with no fuse, the wire burns.",
        remedy: "Find where the two meet and part them.",
        about: [...live, ...grounds].map((point) => point.at),
      };
    }
  },
});

/** What copper and fuses alone join to a circuit, and which fuses those are. */
function withinFuses(
  context: Context,
  start: number,
  seen: Set<number>,
): { points: Point[]; fuses: string[] } {
  const ids = [start];
  const fuses = new Set<string>();
  seen.add(start);
  for (let next = 0; next < ids.length; next++) {
    for (const { to, gate } of context.ways[ids[next]!] ?? []) {
      if (gate.kind !== "fuse") continue;
      fuses.add(context.harness.parts[gate.fuse]?.designation ?? gate.fuse);
      if (seen.has(to)) continue;
      seen.add(to);
      ids.push(to);
    }
  }
  const points = ids.flatMap((id) => context.points.circuits[id]!.points);
  return { points, fuses: [...fuses].sort(compareNames) };
}

const GROUNDS = FUNCTIONS.filter(({ group }) => group === "ground").map(({ id }) => id);
