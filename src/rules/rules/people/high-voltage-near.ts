import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { aboutWires, loomsWhere, sayRuns, together } from "../../shared/looms.ts";
import { isOrAre, sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "high-voltage-near",
    group: "people",
    severity: "danger",
    summary: "Looms and boxes of this job keep away from high-voltage cables and parts.",
    source: "common practice, no source; the maker's instructions and licensed practice go before this",
    reads: [...NAMES, "wiring", "functions", "runs"],
    fixable: false,
  },
  *check(context) {
    const remedy =
      "Choose another way, which shares no clip, hole or cover with high voltage. What cannot be kept away is for licensed people, by the maker's instructions.";
    for (const looms of together(loomsWhere(context, ({ near }) => near.includes("high-voltage")))) {
      const { wires } = looms[0]!;
      yield {
        message: `${looms.length === 1 ? "Run" : "Runs"} ${sayRuns(looms)} ${looms.length === 1 ? "comes" : "come"} close to high voltage; ${sayList(wires.map(({ designation }) => designation))} ${isOrAre(wires)} in it.`,
        consequence: "A chafed cable puts its voltage onto the loom, and onto whoever touches what it feeds.",
        remedy,
        about: aboutWires(wires),
      };
    }
    for (const part of context.parts) {
      if (part.kind !== "module" || !part.near.includes("high-voltage")) continue;
      yield {
        message: `${part.designation} stands close to high voltage.`,
        consequence: "Whoever fits or mends it works beside parts that kill.",
        remedy,
        about: [{ part: part.id }],
      };
    }
  },
});
