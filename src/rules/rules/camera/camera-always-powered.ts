import { wakes } from "../../../electrical/operate/box-contacts.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { type Camera, camerasOf } from "../../shared/cameras.ts";
import { nameOf, sayFeed, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "camera-always-powered",
    group: "camera",
    severity: "weak",
    summary: "A camera is fed only with the key on or in reverse.",
    source:
      "common practice, no source; a workshop manual shows a factory camera that is fed whenever the key is on",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
  },
  *check(context) {
    for (const camera of camerasOf(context)) {
      if (sleepsByItself(context, camera)) continue;
      for (const feed of camera.feeds) {
        const circuit = context.circuitOf(feed);
        const steady = context.feeds.feeds(circuit).find(({ unattended }) => unattended.includes("off"));
        if (!steady) continue;
        yield {
          message: `${camera.part.designation} is fed with the key off, at ${sayPoint(context, feed)}: from ${sayFeed(context, steady)}.`,
          consequence: "It drains the battery day and night, runs hot and does not last.",
          remedy: `Feed ${nameOf(feed)} from a lead that is live in reverse, or with the key on.`,
          about: [feed.at, steady.source.at],
        };
      }
    }
  },
});

/** It has a constant feed to remember or to watch by, and another lead that wakes it, or its sheet says that it sleeps. */
function sleepsByItself(context: Context, { part, points }: Camera): boolean {
  if (part.kind !== "module") return false;
  if (part.sleeps === "yes") return true;
  const takes = points.filter((point) => point.direction === "takes" && !context.isLeftOut(point));
  return takes.some(({ means }) => means.id === "constant-feed") && takes.some(({ means }) => wakes(means));
}
