import type { Point } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { isPostPoint, postFrom } from "../../shared/negatives.ts";
import { returnsOf } from "../../shared/reversed.ts";
import { byName, nameOf, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "negative-to-post-unfused",
    group: "protection",
    severity: "weak",
    summary:
      "Where the harness's policy is to fuse both leads of what is wired to the battery's posts, both have a fuse.",
    source:
      "Caltrans, Mobile Radio Telephone: both leads fused where they go to the battery's posts; FCS 1362:2010 §4.6.3 says otherwise",
    reads: [...CIRCUITS, ...NAMES, "settings", "sizes", "lengths", "runs"],
    fixable: false,
  },
  *check(context) {
    const { choice, book } = context.profile.negativeFuse;
    if (choice !== "both-at-posts") return;
    if (!context.points.all.some(isPostPoint)) return;
    const units = [...context.newUnits.map(returnsOf), ...loadReturns(context)];
    for (const returns of units) {
      for (const point of [...returns].sort(byName)) {
        const post = postFrom(context, point.landings);
        if (!post) continue;
        yield {
          message: `${sayPoint(context, point)} goes straight to the battery's negative post, ${nameOf(post)}, without a fuse (${book}).`,
          consequence:
            "If the body strap of the battery opens, the starter's current looks for its way through this lead.",
          remedy: `Put a fuse into the lead close to ${nameOf(post)}, of the rating of the one in the positive, or take the lead to the body.`,
          about: [point.at, post.at],
        };
      }
    }
  },
});

function loadReturns({ parts, points }: Context): readonly (readonly Point[])[] {
  return parts.flatMap((part) => (part.kind === "load" ? [[points.pointAt(part.id, 2)!]] : []));
}
