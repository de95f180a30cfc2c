import { defineRule } from "../../rule.ts";
import { aboutWires, loomsWhere, together } from "../../shared/looms.ts";
import { sayList } from "../../words.ts";

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
  *check(context) {
    const undated = loomsWhere(
      context,
      ({ length_m, from, to }) => length_m !== "unknown" && from.trim() === "" && to.trim() === "",
    );
    for (const looms of together(undated)) {
      const lengths = sayList(looms.map(({ run }) => `${run.designation} is ${run.length_m} m long`));
      yield {
        message: `Run ${lengths}, and nobody says from where to where.`,
        consequence: "It is cut too short by a housing, or measured from another end.",
        remedy: "Say where the run begins and where it ends: the back of a housing, a break-out, a grommet.",
        about: aboutWires(looms[0]!.wires),
      };
    }
  },
});
