import type { Point } from "../../../electrical/points.ts";
import { type ContactKey, contactKey } from "../../../graph/contacts.ts";
import type { Fuse, PartId } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { postFrom } from "../../shared/negatives.ts";
import { byName, nameOf, sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "fuse-in-negative",
    group: "protection",
    severity: "weak",
    summary:
      "Fuses stand in the positive lead; one in the negative only where a unit is wired straight to the battery's posts, and that is the harness's policy.",
    source:
      "FCS 1362:2010 §4.6.3 and §4.6.4: positive only on a negative-earth vehicle; Caltrans, Mobile Radio Telephone: both leads at the battery's posts",
    reads: [...CIRCUITS, ...NAMES, "settings", "sizes", "lengths", "runs"],
    fixable: false,
  },
  *check(context) {
    for (const part of context.parts) {
      if (part.kind !== "fuse") continue;
      const circuits = [1, 2].map((contact) => context.points.circuitAt(part.id, contact));
      const isReturn = circuits.every((one) => context.grounds.isLive(one) && !context.feeds.isLive(one));
      if (!isReturn || circuits[0] === circuits[1]) continue;
      const { choice, book } = context.profile.negativeFuse;
      const [toGround, units] = sidesOf(context, part);
      if (!units.length) continue;
      if (choice === "both-at-posts" && postFrom(context, toGround)) continue;
      yield {
        message: `${part.designation} stands in the negative lead of ${sayList(units.map(nameOf))}${
          choice === "never"
            ? `; fuses belong in the positive only (${book})`
            : `, which ends on the body, not on the battery's post (${book})`
        }.`,
        consequence:
          "When it opens, the unit is not off: it finds its way back through line shields or the antenna's braid, which are not made for it.",
        remedy: `Take ${part.designation} out and join its leads; protect the positive lead instead.`,
        about: [{ part: part.id }, ...units.map(({ at }) => at)],
      };
    }
  },
});

/** What lies on the ground's side of a fuse, and whose returns lie on the other. */
function sidesOf(context: Context, fuse: Fuse): readonly [readonly ContactKey[], readonly Point[]] {
  const zones = [1, 2].map((contact) =>
    zoneWithout(context, fuse.id, context.traced.circuitAt(fuse.id, contact)!.id),
  );
  const ground = zones.findIndex((zone) => zone.some((id) => isGrounded(context, id)));
  if (ground < 0) return [[], []];
  const returns = zones[1 - ground]!.flatMap((id) => context.points.circuits[id]!.points)
    .filter(({ means, direction }) => means.group === "ground" && direction !== "gives")
    .sort(byName);
  return [[contactKey(fuse.id, ground + 1)], returns];
}

function isGrounded(context: Context, circuit: number): boolean {
  return context.points.circuits[circuit]!.points.some(
    ({ means, direction }) => means.group === "ground" && direction === "gives",
  );
}

/** The circuits that are reached from one without passing a fuse. */
function zoneWithout(context: Context, fuse: PartId, start: number): readonly number[] {
  const zone = [start];
  for (const from of zone)
    for (const { to, gate } of context.ways[from] ?? [])
      if (!(gate.kind === "fuse" && gate.fuse === fuse) && !zone.includes(to)) zone.push(to);
  return zone;
}
