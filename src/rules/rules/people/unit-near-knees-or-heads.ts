import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";

export default defineRule({
  meta: {
    id: "unit-near-knees-or-heads",
    group: "people",
    severity: "danger",
    summary: "No box stands where knees or heads strike in a crash.",
    source: "FCS 1362 §2 and §3.2; the maker's instructions go before this",
    reads: [...NAMES, "functions"],
    fixable: false,
  },
  *check({ parts }) {
    for (const part of parts) {
      if (part.kind !== "module" || !part.near.includes("knees-or-heads")) continue;
      yield {
        message: `${part.designation} stands where knees or heads strike.`,
        consequence: "In a crash its edges injure whoever is thrown against it.",
        remedy:
          "Choose a place out of reach of knees and heads, by the vehicle maker's instructions, and agree on it with the driver.",
        about: [{ part: part.id }],
      };
    }
  },
});
