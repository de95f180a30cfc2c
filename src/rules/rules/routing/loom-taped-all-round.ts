import { digits } from "../../../electrical/figure.ts";
import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { aboutWires, loomsWhere, sayRun, together } from "../../shared/looms.ts";
import { sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "loom-taped-all-round",
    group: "routing",
    severity: "tidy",
    summary:
      "A long loom inside the cabin can be opened: it is tied or in split loom, not taped all the way.",
    source: "FCS 1362:2010 p. 21; the length is a threshold of our own",
    reads: [...NAMES, "wiring", "runs", "settings"],
    fixable: true,
  },
  *check(context) {
    const { value, book } = context.profile.limits.tapedInCabin_mm;
    const taped = loomsWhere(
      context,
      ({ covering, zone, length_m }) =>
        covering === "cloth-tape" &&
        zone === "cabin" &&
        length_m !== "unknown" &&
        length_m * 1000 > value + 1e-6,
    ).filter(({ wires }) => wires.length > 1);
    for (const looms of together(taped)) {
      const { wires } = looms[0]!;
      const places = looms.map(
        ({ run }) => `${sayRun(run)} is taped all round for ${digits(Number(run.length_m) * 1000)} mm`,
      );
      yield {
        message: `${sayList(places)}; ${value} mm are the most inside the cabin (${book}).`,
        consequence: "Nobody can follow one core or replace it without cutting the whole loom open.",
        remedy: "Use split loom or ties at short distances; keep cloth tape for where leads branch off.",
        about: aboutWires(wires),
        suggestions: looms.map(({ run }) => ({
          label: `Put ${run.designation} into split loom`,
          edit: { kind: "put-entry", section: "runs", entry: { ...run, covering: "split-loom" } },
        })),
      };
    }
  },
});
