import { digits } from "../../../electrical/figure.ts";
import type { RunId, Wire } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { NAMES } from "../../facets.ts";
import { defineRule, type Found } from "../../rule.ts";
import { runNames } from "../../shared/joints.ts";
import { leadOf, ownRuns, sumOfRuns } from "../../shared/lead-runs.ts";
import { sayList, sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "wire-shorter-than-its-runs",
    group: "routing",
    severity: "weak",
    summary: "A wire is as long as the runs that it follows.",
    source: "FAA AC 43.13-1B §11-118 (slack for two new terminations at each end)",
    reads: [...NAMES, "wiring", "lengths", "runs"],
    fixable: false,
  },
  *check(context) {
    const { harness } = context;
    if (!Object.keys(harness.runs).length) return;
    // Of a lead that is too short for its runs, one of the wires is.
    const short = Object.values(harness.wires).filter(
      ({ runs, length_m }) =>
        runs.length > 0 && length_m !== "unknown" && length_m < sumOfRuns(harness, runs).sum_m - NO_MATTER_m,
    );
    const told = new Set<Wire>();
    for (const wire of short) {
      const found = shortOf(context, [wire], ownRuns(context, wire));
      if (!found) continue;
      for (const one of leadOf(context, wire)) told.add(one);
      yield found;
    }
    for (const wire of short) {
      if (told.has(wire)) continue;
      const lead = leadOf(context, wire);
      for (const one of lead) told.add(one);
      if (lead.length < 2 || lead.some((one) => endsAnywhere(context, one))) continue;
      const found = shortOf(context, lead, [...new Set(lead.flatMap(({ runs }) => runs))]);
      if (found) yield found;
    }
  },
});

/** A spare is cut off somewhere along its run, and a fuse may stand there. */
function endsAnywhere({ harness }: Context, { ends }: Wire): boolean {
  return ends.some((end) => {
    const kind = end === "loose" ? "cap" : harness.parts[end.part]?.kind;
    return kind !== "splice" && kind !== undefined && ANYWHERE.has(kind);
  });
}

const ANYWHERE: ReadonlySet<string> = new Set(["cap", "fuse", "diode", "resistor", "capacitor"]);

/** Half a millimetre is no more than how a figure was rounded. */
const NO_MATTER_m = 0.0005;

function shortOf(context: Context, wires: readonly Wire[], runs: readonly RunId[]): Found | null {
  if (!runs.length) return null;
  let length_m = 0;
  for (const wire of wires) {
    if (wire.length_m === "unknown") return null;
    length_m += wire.length_m;
  }
  const { sum_m } = sumOfRuns(context.harness, runs);
  if (length_m >= sum_m - NO_MATTER_m) return null;
  const several = wires.length > 1;
  return {
    message: `${sayList(wires.map(sayWire))} ${several ? "are together" : "is"} ${digits(length_m)} m long, and ${several ? "their" : "its"} way through ${sayList(runNames(context, runs))} is ${digits(sum_m)} m.`,
    consequence: "The lead does not reach, or it is pulled tight and draws its contact out of the housing.",
    remedy:
      "Cut it longer: its runs, and enough beyond them to fit each terminal twice. Or set right the runs.",
    about: wires.map(({ id }) => ({ wire: id })),
  };
}
