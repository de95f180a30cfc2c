import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { WET_PLACES } from "../../shared/joints.ts";
import { aboutWires, loomsWhere, sayRun, together } from "../../shared/looms.ts";
import { sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "no-drip-loop",
    group: "routing",
    severity: "weak",
    summary: "Where it is wet, the loom hangs lowest before the plug or the bulkhead that it enters.",
    source: "FAA AC 43.13-1B §11-96",
    reads: [...NAMES, "wiring", "runs"],
    fixable: false,
  },
  *check(context) {
    const running = loomsWhere(
      context,
      ({ dripLoop, zone }) => dripLoop === "no" && WET_PLACES[zone] !== undefined,
    );
    for (const looms of together(running)) {
      const { wires } = looms[0]!;
      const places = looms.map(({ run }) => `${sayRun(run)} lies ${WET_PLACES[run.zone]}`);
      yield {
        message: `${sayList(places)} and comes down into what it enters, without a drip loop.`,
        consequence: "Water runs along the wires into the plug or through the bulkhead.",
        remedy: "Let the loom hang in a loop below the entry, so that water drips off at the lowest point.",
        about: aboutWires(wires),
      };
    }
  },
});
