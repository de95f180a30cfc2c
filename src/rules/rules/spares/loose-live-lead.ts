import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { looseLeads } from "../../shared/loose.ts";
import { sayFeed } from "../../words.ts";

export default defineRule({
  meta: {
    id: "loose-live-lead",
    group: "spares",
    severity: "danger",
    summary: "No loose end can become live.",
    source:
      "33 CFR 183.445(b) asks for protection or a boot on studs that are always live; applied to leads: common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
    brings: ["trigger-core-at-one-end"],
  },
  *check(context) {
    for (const lead of looseLeads(context)) {
      if (!lead.isLive || !lead.circuit) continue;
      const feed = context.feeds.feeds(lead.circuit)[0];
      const unfused = feed?.protection === "none";
      yield {
        message: `${lead.name} from ${lead.from} ${lead.ends}, and is live.${
          feed ? ` It is fed from ${sayFeed(context, feed)}.` : ""
        }${lead.wish}`,
        consequence: unfused
          ? "The bare end sparks on the first metal that it touches, and with no fuse the lead burns."
          : "The bare end sparks on the first metal that it touches, and takes a fuse with it.",
        remedy: `Take the feed off first. ${lead.remedy}`,
        about: [{ wire: lead.wire.id }],
        fix: lead.fix,
      };
    }
  },
});
