import type { TestRow } from "../../../graph/harness.ts";
import { Build, build } from "../build.ts";
import { defineExample } from "../example.ts";

function tested(revision: string): Build {
  const base = build().vehicle("X1", { "1": "mute BN" }).wire("X1.1", "XC1", "BN");
  const row: TestRow = {
    id: "t:1" as TestRow["id"],
    kind: "continuity",
    at: [base.at("X1.1")],
    expected: "open",
    reading: "open",
    unit: "",
    passed: true,
    by: "workshop",
    date: "2026-02-03",
    revision,
  };
  const { titleBlock } = base.harness;
  return new Build({
    ...base.harness,
    titleBlock: { ...titleBlock, revision: "B" },
    testRecord: { [row.id]: row },
  });
}

export default defineExample({
  page: [
    "A test belongs to the drawing as it was when the meter was held to it. When the drawing goes on to another revision, its ticks speak of something else.",
    "Not everything has to be tested again: what the change cannot have touched may be signed anew.",
  ],
  trips: () => tested("A"),
  quiet: () => tested("B"),
  quietBecause: "Test and drawing bear the same revision.",
});
