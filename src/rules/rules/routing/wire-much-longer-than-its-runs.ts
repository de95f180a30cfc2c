import { digits } from "../../../electrical/figure.ts";
import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { runNames } from "../../shared/joints.ts";
import { sumOfRuns } from "../../shared/lead-runs.ts";
import { sayList, sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "wire-much-longer-than-its-runs",
    group: "routing",
    severity: "tidy",
    summary: "A wire is not much longer than the runs that it follows.",
    source: "FAA AC 43.13-1B §11-118 (limits of slack); a quarter and 0.3 m are thresholds of our own",
    reads: [...NAMES, "wiring", "lengths", "runs"],
    fixable: false,
  },
  *check(context) {
    const { harness } = context;
    if (!Object.keys(harness.runs).length) return;
    for (const wire of Object.values(harness.wires)) {
      if (!wire.runs.length || wire.length_m === "unknown") continue;
      const { sum_m, isKnown } = sumOfRuns(harness, wire.runs);
      if (!isKnown || sum_m === 0) continue;
      const over_m = wire.length_m - sum_m;
      if (over_m <= sum_m * MOST_SHARE + 1e-9 || over_m <= TAILS_m + 1e-9) continue;
      yield {
        message: `${sayWire(wire)} is ${digits(wire.length_m)} m long, and its way through ${sayList(runNames(context, wire.runs))} is ${digits(sum_m)} m.`,
        consequence: "What is left over is stuffed in somewhere, where it rattles and chafes.",
        remedy: "Cut it to its runs and a little slack, or say which other runs it follows.",
        about: [{ wire: wire.id }],
      };
    }
  },
});

const MOST_SHARE = 0.25;
/** What a lead may need beyond its runs, to reach what it ends in. */
const TAILS_m = 0.3;
