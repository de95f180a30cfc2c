import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { aboutWires, loomsWhere, sayRuns, together } from "../../shared/looms.ts";
import { isOrAre, sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "airbag-in-the-way",
    group: "people",
    severity: "danger",
    summary: "Neither a loom nor a box lies where an airbag unfolds.",
    source:
      "Airbag precautions of makers' workshop manuals; FCS 1362 §2.9.2.2; the maker's own instructions go before this",
    reads: [...NAMES, "wiring", "functions", "runs", "settings"],
    fixable: false,
  },
  *check(context) {
    const wait = context.profile.limits.airbagWait_min;
    const remedy = `Choose another place, by the maker's instructions. Battery off first, then wait as the maker says; where that is not known, at least ${wait.value} minutes (${wait.book}).`;
    for (const looms of together(loomsWhere(context, ({ near }) => near.includes("airbag")))) {
      const { wires } = looms[0]!;
      yield {
        message: `${looms.length === 1 ? "Run" : "Runs"} ${sayRuns(looms)} ${looms.length === 1 ? "comes" : "come"} close to an airbag; ${sayList(wires.map(({ designation }) => designation))} ${isOrAre(wires)} in it.`,
        consequence: "The bag is held back or thrown aside as it unfolds, and the loom is torn out.",
        remedy,
        about: aboutWires(wires),
      };
    }
    for (const part of context.parts) {
      if (part.kind !== "module" || !part.near.includes("airbag")) continue;
      yield {
        message: `${part.designation} stands where an airbag unfolds.`,
        consequence: "It becomes a missile, or the bag unfolds the wrong way.",
        remedy,
        about: [{ part: part.id }],
      };
    }
  },
});
