import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { astrayPairs, tellAstray } from "../../shared/astray.ts";

export default defineRule({
  meta: {
    id: "sides-swapped",
    group: "speakers",
    severity: "weak",
    summary: "A left output drives a speaker on the left, a right output one on the right.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
  },
  *check(context) {
    for (const astray of astrayPairs(context)) {
      if (astray.amiss !== "side") continue;
      yield tellAstray(
        context,
        astray,
        "Balance works backwards; warnings and spoken directions come from the wrong side.",
      );
    }
  },
});
