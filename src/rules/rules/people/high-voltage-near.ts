import { NAMES } from "../../facets.ts";
import { wiresNear } from "../../near-hazard.ts";
import { defineRule } from "../../rule.ts";
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
    for (const { run, wires } of wiresNear(context, "high-voltage")) {
      yield {
        message: `Run ${run.designation} comes close to high voltage; ${sayList(wires.map(({ designation }) => designation))} ${isOrAre(wires)} in it.`,
        consequence: "A chafed cable puts its voltage onto the loom, and onto whoever touches what it feeds.",
        remedy,
        about: wires.map(({ id }) => ({ wire: id })),
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
