import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { astrayPairs, tellAstray } from "../../shared/astray.ts";

export default defineRule({
  meta: {
    id: "front-and-rear-swapped",
    group: "speakers",
    severity: "weak",
    summary: "A front output drives a speaker in front, a rear output one behind.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
  },
  *check(context) {
    for (const astray of astrayPairs(context)) {
      if (astray.amiss !== "axle") continue;
      yield tellAstray(
        context,
        astray,
        "The fader works backwards; the telephone and spoken directions come from behind.",
      );
    }
  },
});
