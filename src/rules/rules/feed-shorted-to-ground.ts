import { isGround } from "../../catalogue/functions.ts";
import { defineRule } from "../rule.ts";
import { byName, isOrAre, sayPoints } from "../words.ts";

export default defineRule({
  meta: {
    id: "feed-shorted-to-ground",
    severity: "danger",
    summary: "Nothing that gives supply voltage is in one circuit with the frame.",
    source: "common practice, no source",
  },
  *check(context) {
    for (const circuit of context.points.circuits) {
      if (circuit.points.length < 2) continue;
      const gives = circuit.points.filter((point) => point.direction === "gives");
      const live = gives.filter(
        (point) =>
          !isGround(point.means.id) && (point.means.liveIn.length > 0 || point.means.active === "supply"),
      );
      const grounds = gives.filter((point) => isGround(point.means.id));
      if (!live.length || !grounds.length) continue;
      live.sort(byName);
      grounds.sort(byName);
      yield {
        message: `${sayPoints(context, live)} ${isOrAre(live)} joined straight to ${sayPoints(context, grounds)}.`,
        consequence: "A dead short: the fuse blows at once, or, with no fuse, the wire burns.",
        remedy: "Find where the two meet and part them.",
        about: [...live, ...grounds].map((point) => point.at),
      };
    }
  },
});
