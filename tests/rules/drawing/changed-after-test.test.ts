import type { TestRow } from "../../../src/graph/harness.ts";
import rule from "../../../src/rules/rules/drawing/changed-after-test.ts";
import { Build, build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

function tested(revision: string, drawn: string, passed: boolean | null = true): Build {
  const base = build().vehicle("X1", { "1": "mute BN" }).wire("X1.1", "XC1");
  const row = (number: number): TestRow => ({
    id: `t:${number}` as TestRow["id"],
    kind: "continuity",
    at: [base.at("X1.1")],
    expected: "",
    reading: "1",
    unit: "",
    passed,
    by: "",
    date: "",
    revision,
  });
  const { titleBlock } = base.harness;
  return new Build({
    ...base.harness,
    titleBlock: { ...titleBlock, revision: drawn },
    testRecord: { "t:1": row(1), "t:2": row(2) } as Record<TestRow["id"], TestRow>,
  });
}

testRule(rule, {
  silent: [
    { name: "the same revision", build: tested("B", "B") },
    { name: "not tested yet", build: tested("A", "B", null) },
    { name: "the test does not say of which", build: tested("", "B") },
    { name: "the drawing has no revision", build: tested("A", "") },
  ],
  found: [
    {
      name: "the drawing has moved on",
      build: tested("A", "B"),
      findings: [{ at: ["X1.1"], says: "2 tests were made on revision A; the drawing is at B", fix: null }],
    },
    { name: "in numbers as well", build: tested("1", "2"), findings: [{ at: ["X1.1"], fix: null }] },
  ],
});
