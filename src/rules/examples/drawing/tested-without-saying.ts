import type { TestRow } from "../../../graph/harness.ts";
import { Build, build } from "../build.ts";
import { defineExample } from "../example.ts";

function tested(reading: string): Build {
  const base = build().vehicle("X1", { "1": "mute BN" }).wire("X1.1", "XC1", "BN");
  const row: TestRow = {
    id: "t:1" as TestRow["id"],
    kind: "continuity",
    at: [base.at("X1.1")],
    expected: "open",
    reading,
    unit: "Ω",
    passed: true,
    by: "workshop",
    date: "2026-02-03",
    revision: "A",
  };
  return new Build({ ...base.harness, testRecord: { [row.id]: row } });
}

export default defineExample({
  page: [
    "A tick says that somebody was content; a reading says what was there. Only the second can be compared when something fails a year later.",
    "Steps that are looked at, such as a seal that is in its place, need no reading.",
  ],
  trips: () => tested(""),
  quiet: () => tested("more than 10 M"),
  quietBecause: "The reading stands beside the tick.",
});
