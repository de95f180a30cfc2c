import { digits } from "../../../electrical/figure.ts";
import { NAMES, SOLVED } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { mostsOf } from "../../shared/most.ts";
import { amplifiers_A, drawnBehind, HAIR, sayWhen } from "../../shared/steady.ts";
import { nameOf, sayList, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "tapped-circuit-overloaded",
    group: "feeds",
    severity: "fault",
    summary: "What is taken from a lead of the vehicle stays well below the fuse that stands behind it.",
    source: "46 CFR 183.380(d), by its principle; 80 % for what flows for good is common practice, no source",
    reads: [...SOLVED, ...NAMES],
    fixable: false,
    brings: ["fuse-too-small", "wire-overloaded"],
  },
  *check(context) {
    const limit = context.profile.limits.fuseLoad_percent;
    for (const stretch of context.stretches.all) {
      const { guard, source } = stretch;
      if (guard.kind !== "behind") continue;
      const most = mostsOf(context)?.source(source.key);
      if (!most) continue;
      const isOver = most.amps > guard.rating_A * HAIR;
      const most_A = (guard.rating_A * limit.value) / 100;
      if (!isOver && most.amps - amplifiers_A(context, stretch, most.view) <= most_A * HAIR) continue;
      const names = drawnBehind(context, stretch, most.view);
      yield {
        severity: isOver ? "fault" : "weak",
        message: `${sayPoint(context, source)} gives ${digits(most.amps, 3)} A to ${
          names.length ? sayList(names, 4) : "what hangs on it"
        } ${sayWhen(most.view.state)}, and the fuse behind it is rated ${guard.rating_A} A${
          isOver ? "" : `; ${digits(limit.value)} % of that is the most (${limit.book})`
        }.`,
        consequence: "The vehicle's own fuse blows, and what the vehicle feeds from it is dead too.",
        remedy: `Never put a bigger fuse in the vehicle's box. Give the new load a fused feed of its own, or a relay that is fed from the battery and only driven from ${nameOf(source)}.`,
        about: [source.at],
      };
    }
  },
});
