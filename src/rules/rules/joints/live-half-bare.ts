import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { changed, jointsOf } from "../../shared/joints.ts";
import { sayFeed } from "../../words.ts";

export default defineRule({
  meta: {
    id: "live-half-bare",
    group: "joints",
    severity: "danger",
    summary: "Where a joint can be parted, the half that stays live is the shrouded one.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
  },
  *check(context) {
    for (const { part } of jointsOf(context)) {
      if (part.method !== "bullet-pair" || part.liveHalf !== "bare") continue;
      const [feed] = context.feeds
        .feeds(context.points.circuitAt(part.id, 1))
        .filter(({ source }) => source.means.group === "feed" || source.means.active === "supply");
      if (!feed) continue;
      const always = feed.live.includes("off");
      yield {
        severity: always ? "danger" : "fault",
        message: `The half of ${part.designation} that stays live when it is parted is the bare pin: ${sayFeed(context, feed)}.`,
        consequence:
          "The moment it is parted, a live pin hangs free and sparks against the first metal it meets.",
        remedy: "Turn the pair round: the shrouded, female half belongs on the live side.",
        about: [{ part: part.id }],
        fix: changed(part, `Put the shrouded half of ${part.designation} on the live side`, {
          liveHalf: "shrouded",
        }),
      };
    }
  },
});
