import { defineRule } from "../../rule.ts";
import { compareNames, sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "length-without-datum",
    group: "drawing",
    severity: "tidy",
    summary: "A run that has a length says from where to where it is measured.",
    source: "Drawing guides of cable shops: lengths stand between named datums (through a summary)",
    reads: ["runs", "wiring", "parts"],
    fixable: false,
  },
  *check({ harness }) {
    const bare = Object.values(harness.runs)
      .filter(({ length_m, from, to }) => length_m !== "unknown" && from.trim() === "" && to.trim() === "")
      .sort((a, b) => compareNames(a.designation, b.designation));
    if (!bare.length) return;
    for (const run of bare) {
      const inside = Object.values(harness.wires).filter(({ runs }) => runs.includes(run.id));
      if (!inside.length) continue;
      yield {
        message: `Run ${run.designation} is ${sayList([`${run.length_m} m`])} long, and nobody says from where to where.`,
        consequence: "It is cut too short by a housing, or measured from another end.",
        remedy: "Say where the run begins and where it ends: the back of a housing, a break-out, a grommet.",
        about: inside.map(({ id }) => ({ wire: id })),
      };
    }
  },
});
