import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "changed-after-test",
    group: "drawing",
    severity: "weak",
    summary: "What was tested is the revision that is drawn.",
    source: "common practice, no source",
    reads: [...NAMES, "tests", "title"],
    fixable: false,
  },
  *check({ harness, parts }) {
    const { revision } = harness.titleBlock;
    const [first] = parts;
    if (revision.trim() === "" || !first) return;
    const stale = Object.values(harness.testRecord).filter(
      (row) => row.passed !== null && row.revision.trim() !== "" && row.revision.trim() !== revision.trim(),
    );
    if (!stale.length) return;
    const tested = [...new Set(stale.map((row) => row.revision.trim()))].sort();
    const at = stale.flatMap((row) => row.at).filter(({ part }) => harness.parts[part]);
    const keys = new Map(at.map((one) => [`${one.part} ${one.contact}`, one]));
    yield {
      message: `${stale.length === 1 ? "One test was" : `${stale.length} tests were`} made on revision ${sayList(tested)}; the drawing is at ${revision.trim()}.`,
      consequence: "The signature proves nothing of what has been changed since.",
      remedy: "Make those tests again that the change may touch, and write the new revision beside them.",
      about: keys.size ? [...keys.values()] : [{ part: first.id }],
    };
  },
});
