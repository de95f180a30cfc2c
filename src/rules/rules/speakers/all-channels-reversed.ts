import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { reversalsOf } from "../../shared/speakers.ts";
import { sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "all-channels-reversed",
    group: "speakers",
    severity: "tidy",
    summary: "The speakers of a unit are on its outputs plus to plus.",
    source: "from memory: only that channels differ can be heard",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
  },
  *check(context) {
    for (const { swapped, isAlike } of reversalsOf(context)) {
      if (!isAlike) continue;
      const names = sayList(
        swapped.map(({ pair }) => pair.plus.means.name.replace(/^speaker (.*) \+$/, "$1")),
      );
      yield {
        message: `Every speaker is reversed: ${names}.`,
        consequence: "Nothing that can be heard, as long as all of them stay alike.",
        remedy: "Leave it, or put it straight when the harness is next apart.",
        about: swapped.flatMap(({ pair }) => [pair.plus.at, pair.minus.at]),
      };
    }
  },
});
