import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { crossedPairs, tellCrossed } from "../../shared/crossed-pairs.ts";
import { DATA_LINES } from "../../shared/data-lines.ts";

export default defineRule({
  meta: {
    id: "can-leads-exchanged",
    group: "data",
    severity: "fault",
    summary: "CAN high is joined to CAN high, and CAN low to CAN low.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
    brings: ["same-function-unjoined", "required-lead-missing"],
  },
  *check(context) {
    for (const crossed of crossedPairs(context, CAN))
      yield tellCrossed(context, crossed, {
        consequence:
          "The bus stands still for everybody on it: warnings from control units that have nothing to do with this job, and nothing of the new module.",
        remedy: "Exchange the two leads at one end.",
      });
  },
});

const CAN = DATA_LINES.filter((name) => name.includes("can-"));
