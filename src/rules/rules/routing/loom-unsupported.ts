import { digits } from "../../../electrical/figure.ts";
import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { aboutWires, loomsWhere, sayRun, together } from "../../shared/looms.ts";
import { sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "loom-unsupported",
    group: "routing",
    severity: "weak",
    summary: "The loom is clipped at short distances all the way.",
    source: "FAA AC 43.13-1B §11-96 (24 in); 46 CFR 183.340",
    reads: [...NAMES, "wiring", "runs", "settings"],
    fixable: false,
  },
  *check(context) {
    const { value, book } = context.profile.limits.support_mm;
    const sagging = loomsWhere(
      context,
      ({ support_m, length_m }) =>
        support_m !== "unknown" &&
        support_m * 1000 > value + 1e-6 &&
        // A piece as short as that hangs between its two ends.
        (length_m === "unknown" || length_m * 1000 > value + 1e-6),
    );
    for (const looms of together(sagging)) {
      const { wires } = looms[0]!;
      const places = looms.map(
        ({ run }) => `${sayRun(run)} has ${digits(Number(run.support_m) * 1000)} mm from clip to clip`,
      );
      yield {
        message: `${sayList(places)}; ${value} mm are the most (${book}).`,
        consequence: "It sags, chafes where it touches, and drums against the trim.",
        remedy: "Add clips; ties and tape that hold it to other wires are no support.",
        about: aboutWires(wires),
      };
    }
  },
});
