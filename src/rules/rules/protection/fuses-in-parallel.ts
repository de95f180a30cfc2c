import type { Fuse } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, type Found } from "../../rule.ts";
import { byName, compareNames, nameOf, sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "fuses-in-parallel",
    group: "protection",
    severity: "danger",
    summary: "No two fuses stand side by side in one lead.",
    source: "FCS 1362:2010 §4.6.3",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
  },
  *check(context) {
    const pairs = new Map<string, Fuse[]>();
    for (const part of context.parts) {
      if (part.kind !== "fuse") continue;
      const [a, b] = [1, 2].map((contact) => context.traced.circuitAt(part.id, contact)!.id) as [
        number,
        number,
      ];
      if (a === b) continue;
      const pair = `${Math.min(a, b)} ${Math.max(a, b)}`;
      pairs.set(pair, [...(pairs.get(pair) ?? []), part]);
    }
    for (const fuses of pairs.values()) {
      if (fuses.length < 2) continue;
      fuses.sort((a, b) => compareNames(a.designation, b.designation));
      const names = sayList(fuses.map(({ designation }) => designation));
      yield {
        message: `${names} stand side by side: both ends of each lie in the same two circuits.`,
        consequence: SIDE_BY_SIDE,
        remedy: "Leave one of them, rated for the wire behind it, and take the others out.",
        about: fuses.map(({ id }) => ({ part: id })),
      };
    }
    yield* behindCavities(context);
  },
});

const SIDE_BY_SIDE =
  "Neither rating holds: on a short they open one after the other, and until then the wire carries both.";

/** Two fused leads of the vehicle for one and the same feed, tied together, are two fuses side by side. */
function* behindCavities(context: Context): Iterable<Found> {
  for (const { points } of context.points.circuits) {
    if (points.length < 2) continue;
    const fused = points.filter(
      ({ direction, means, contact }) =>
        direction === "gives" && means.group === "feed" && typeof contact.cavity?.fuse_A === "number",
    );
    const same = fused.filter((point) => point.means === fused[0]!.means).sort(byName);
    // Cavities of one rating may well be two contacts behind one fuse.
    if (new Set(same.map(({ contact }) => contact.cavity!.fuse_A)).size < 2) continue;
    const names = sayList(same.map((point) => `${nameOf(point)} (${point.contact.cavity!.fuse_A} A)`));
    yield {
      message: `${names} are tied together, so the fuses behind them stand side by side.`,
      consequence: SIDE_BY_SIDE,
      remedy: "Take the feed from one of the two, and cap the other.",
      about: same.map(({ at }) => at),
    };
  }
}
