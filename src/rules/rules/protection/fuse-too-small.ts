import { digits } from "../../../electrical/figure.ts";
import { NAMES, SOLVED } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { mostsOf } from "../../shared/most.ts";
import { amplifiers_A, drawnBehind, HAIR, sayWhen } from "../../shared/steady.ts";
import { sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "fuse-too-small",
    group: "protection",
    severity: "weak",
    summary: "What a fuse carries for good is well below its rating.",
    source: "common practice, no source: 80 % of the rating for what flows for good",
    reads: [...SOLVED, ...NAMES],
    fixable: false,
  },
  *check(context) {
    const limit = context.profile.limits.fuseLoad_percent;
    const told = new Set<string>();
    for (const stretch of context.stretches.all) {
      const { guard } = stretch;
      if (guard.kind !== "fuse" || guard.fuse.rating_A === "unknown") continue;
      // Of two ways into one fuse, the first tells.
      if (told.has(guard.fuse.id)) continue;
      told.add(guard.fuse.id);
      const most = mostsOf(context)?.fuse(guard.fuse.id);
      if (!most) continue;
      const rating_A = guard.fuse.rating_A;
      const isOver = most.amps > rating_A * HAIR;
      const most_A = (rating_A * limit.value) / 100;
      if (!isOver && most.amps <= most_A * HAIR) continue;
      if (!isOver && most.amps - amplifiers_A(context, stretch, most.view) <= most_A * HAIR) continue;
      const names = drawnBehind(context, stretch, most.view);
      yield {
        message: `${guard.fuse.designation} (${rating_A} A) carries ${digits(most.amps, 3)} A for ${
          names.length ? sayList(names, 4) : "what is behind it"
        } ${sayWhen(most.view.state)}: ${
          isOver ? "more than its rating" : `more than ${digits(limit.value)} % of its rating (${limit.book})`
        }.`,
        consequence:
          "It blows now and then without a fault, and sooner or later somebody puts in a bigger one than the wire bears.",
        remedy:
          "Size the wire for the load first and the fuse for the wire, or split the loads over two fuses.",
        about: [{ part: guard.fuse.id }],
      };
    }
  },
});
