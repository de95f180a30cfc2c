import type { Splice } from "../../../graph/harness.ts";
import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { longestChain } from "../../shared/joint-chains.ts";
import { jointsOf } from "../../shared/joints.ts";
import { compareNames, sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "several-joints-in-lead",
    group: "joints",
    severity: "tidy",
    summary: "A lead goes from contact to contact with as few joints as the job needs.",
    source: "NASA-STD-8739.4 §19.3 (fewest splices; an unbroken conductor is best)",
    reads: [...NAMES, "wiring", "joints", "settings"],
    fixable: false,
  },
  *check(context) {
    const { value, book } = context.profile.limits.jointsInLead;
    const byCircuit = new Map<number, Splice[]>();
    for (const { part } of jointsOf(context)) {
      const { id } = context.traced.circuitAt(part.id, 1)!;
      const list = byCircuit.get(id);
      if (list) list.push(part);
      else byCircuit.set(id, [part]);
    }
    for (const joints of byCircuit.values()) {
      if (joints.length <= value) continue;
      const chain = longestChain(context, joints);
      if (!chain || chain.joints.length <= value) continue;
      yield {
        message: `The lead from ${chain.from} to ${chain.to} goes through ${chain.joints.length} joints: ${sayList(chain.joints.map(({ designation }) => designation))}; ${value} ${value === 1 ? "is" : "are"} the most (${book}).`,
        consequence: "Each joint is one more place that can fail, and one more to measure.",
        remedy: "Replace pieces of it by one longer wire.",
        about: [...chain.joints]
          .sort((a, b) => compareNames(a.designation, b.designation))
          .map(({ id }) => ({ part: id })),
      };
    }
  },
});
