import { keysOf } from "../../../graph/contacts.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";

export default defineRule({
  meta: {
    id: "chart-without-source",
    group: "drawing",
    severity: "tidy",
    summary: "A chart that a connector was drawn from says its title, or that it was measured.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES, "housings"],
    fixable: false,
  },
  *check(context) {
    for (const part of context.parts) {
      if (part.kind !== "connector" || part.chart === null) continue;
      const { title, measured } = part.chart;
      if (title.trim() !== "" || measured || !keysOf(part).length) continue;
      yield {
        message: `The chart of ${part.designation} has no title, and does not say that it was measured.`,
        consequence: "Nobody can tell later which edition was believed.",
        remedy: "Write the chart's title, edition and date; if it was found with a meter, say so.",
        about: [{ part: part.id }],
      };
    }
  },
});
