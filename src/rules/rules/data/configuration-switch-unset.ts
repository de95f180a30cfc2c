import { defineRule } from "../../rule.ts";
import { sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "configuration-switch-unset",
    group: "data",
    severity: "weak",
    summary: "How every configuration switch stands is written down.",
    source: "common practice, no source",
    reads: ["parts", "functions", "designations"],
    fixable: false,
  },
  *check(context) {
    for (const part of context.parts) {
      if (part.kind !== "module") continue;
      const unset = part.switches.filter(
        ({ position, wanted }) => position === "unset" && wanted !== "either",
      );
      if (!unset.length) continue;
      yield {
        message: `${part.designation}: nobody has written down how ${
          unset.length === 1 ? "switch" : "switches"
        } ${sayList(
          unset.map((one) => (one.wanted === "unknown" ? one.label : `${one.label} (wanted ${one.wanted})`)),
        )} ${unset.length === 1 ? "stands" : "stand"}.`,
        consequence:
          "The module may be set for another vehicle, and after a repair nobody can set it again without the chart.",
        remedy: "Set it from the module's chart, photograph it, and record the position.",
        about: [{ part: part.id }],
      };
    }
  },
});
