import type { TestRow } from "../../../src/graph/harness.ts";
import rule from "../../../src/rules/rules/drawing/tested-without-saying.ts";
import { Build, build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

function tested(known: Partial<TestRow>): Build {
  const base = build().vehicle("X1", { "1": "constant-feed RD fuse:10" }).wire("X1.1", "XC1");
  const row: TestRow = {
    id: "t:1" as TestRow["id"],
    kind: "continuity",
    at: [base.at("X1.1")],
    expected: "below 1 Ω",
    reading: "",
    unit: "Ω",
    passed: true,
    by: "",
    date: "",
    revision: "A",
    ...known,
  };
  return new Build({ ...base.harness, testRecord: { [row.id]: row } });
}

testRule(rule, {
  silent: [
    { name: "a reading stands there", build: tested({ reading: "0.2" }) },
    { name: "not done yet", build: tested({ passed: null }) },
    { name: "what is looked at has no reading", build: tested({ kind: "see" }) },
  ],
  found: [
    {
      name: "a tick alone",
      build: tested({}),
      findings: [{ at: ["X1.1"], says: "The continuity test at X1.1 is ticked as passed", fix: null }],
    },
    {
      name: "failed, and nobody says by how much",
      build: tested({ kind: "key-position", passed: false }),
      findings: [{ at: ["X1.1"], says: "key position test", fix: null }],
    },
  ],
});
