import type { Point } from "../../../electrical/points.ts";
import type { Feed } from "../../../electrical/reach.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { isInput } from "../../shared/near.ts";
import { byName, nameOf, sayFeed, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "reverse-trigger-from-wrong-place",
    group: "control",
    severity: "weak",
    summary: "A reverse trigger is live in reverse and at no other time.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
    brings: ["one-lead-two-jobs", "same-function-unjoined"],
  },
  *check(context) {
    for (const point of [...context.withFunction("reverse", "camera-trigger")].sort(byName)) {
      if (!isInput(context, point) || point.side !== "equipment" || lightsLamps(context, point)) continue;
      const feeds = context.feeds.feeds(context.circuitOf(point));
      const wrong = feeds.find(isWrong);
      if (!wrong) continue;
      const inReverse = feeds.some((feed) => feed.live.some((state) => IN_REVERSE.has(state)));
      yield {
        message: `${sayPoint(context, point)} is fed from ${sayFeed(context, wrong)}: ${
          inReverse ? "that is not only in reverse" : "that is not in reverse"
        }.`,
        consequence: inReverse
          ? "The camera's picture covers the screen while the vehicle drives forward."
          : "No picture comes in reverse, and one comes when nobody wants it.",
        remedy: `Take ${nameOf(point)} to the feed of the reversing lamp, or to the reverse output of a bus interface.`,
        about: [point.at, wrong.source.at],
      };
    }
  },
});

/** With the gear in reverse the key stands at run. */
const IN_REVERSE: ReadonlySet<string> = new Set(["reverse", "run"]);
/** Leads that are made to say that the vehicle reverses. */
const RIGHT = new Set(["reverse", "camera-trigger", "camera-power"]);

/** Live by itself, without a hand on a button, in some state other than reverse. */
function isWrong({ source, unattended }: Feed): boolean {
  return !RIGHT.has(source.means.id) && unattended.some((state) => state !== "reverse");
}

/** A socket or a lamp of a trailer: where its lamps get their feeds is for other rules to say. */
function lightsLamps(context: Context, point: Point): boolean {
  const own = point.part.kind === "connector" || point.part.kind === "module" ? point.part.cavities : [];
  return (
    own.some(({ function: name }) => name.startsWith("indicator-") || name.startsWith("stop-turn-")) ||
    context.moduleOf(point)?.role === "trailer"
  );
}
