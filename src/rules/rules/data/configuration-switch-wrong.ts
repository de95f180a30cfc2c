import type { Edit } from "../../../graph/edits/edit.ts";
import type { Module } from "../../../graph/harness.ts";
import { defineRule, fixWith } from "../../rule.ts";
import { sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "configuration-switch-wrong",
    group: "data",
    severity: "fault",
    summary: "Every configuration switch stands as the module's chart asks for this job.",
    source: "common practice, no source",
    reads: ["parts", "functions", "designations"],
    fixable: true,
  },
  *check(context) {
    for (const part of context.parts) {
      if (part.kind !== "module") continue;
      const wrong = part.switches.filter(
        ({ position, wanted }) =>
          (wanted === "on" || wanted === "off") && position !== "unset" && position !== wanted,
      );
      if (!wrong.length) continue;
      yield {
        message: `${part.designation}: ${sayList(
          wrong.map((one) => `switch ${one.label} stands ${one.position} and is wanted ${one.wanted}`),
        )}.`,
        consequence:
          "The module takes the vehicle or the receiver for another: no steering-wheel keys, no chimes, a silent amplifier or a picture that never comes.",
        remedy: "Set it as the chart says, with the power off, photograph it, and test each function.",
        about: [{ part: part.id }],
        fix: fixWith(
          wrong.length === 1
            ? `Set switch ${wrong[0]!.label} of ${part.designation} to ${wrong[0]!.wanted}`
            : `Set ${wrong.length} switches of ${part.designation} as wanted`,
          () => setAsWanted(part, new Set(wrong)),
        ),
      };
    }
  },
});

function setAsWanted(part: Module, wrong: ReadonlySet<Module["switches"][number]>): Edit {
  const switches = part.switches.map((one) =>
    wrong.has(one) && (one.wanted === "on" || one.wanted === "off") ? { ...one, position: one.wanted } : one,
  );
  return { kind: "change-part", part: part.id, changes: { switches } };
}
