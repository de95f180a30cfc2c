import { nameContact } from "../../../catalogue/describe.ts";
import type { TestRow } from "../../../graph/harness.ts";
import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";

/** What is looked at has no reading. */
const WITHOUT_READING: ReadonlySet<TestRow["kind"]> = new Set(["see", "function"]);

export default defineRule({
  meta: {
    id: "tested-without-saying",
    group: "drawing",
    severity: "weak",
    summary: "A test that is ticked says what was read.",
    source:
      "A-620 appendix B: the test form asks for values and limits (through an extract); otherwise common practice, no source",
    reads: [...NAMES, "tests"],
    fixable: false,
  },
  *check({ harness, parts }) {
    for (const row of Object.values(harness.testRecord)) {
      if (row.passed === null || row.reading.trim() !== "" || WITHOUT_READING.has(row.kind)) continue;
      const at = row.at.filter(({ part }) => harness.parts[part]);
      const [first] = parts;
      if (!first) return;
      yield {
        message: `The ${row.kind.replaceAll("-", " ")} test at ${at[0] ? nameContact(harness, at[0]) : "a place that is gone"} is ticked as ${row.passed ? "passed" : "failed"}, and no reading stands beside it.`,
        consequence: "Nobody knows what was proved.",
        remedy: "Write down what the meter showed, or take the tick away until it has been read.",
        about: at.length ? at : [{ part: first.id }],
      };
    }
  },
});
