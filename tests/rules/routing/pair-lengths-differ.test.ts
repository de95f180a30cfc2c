import rule from "../../../src/rules/rules/routing/pair-lengths-differ.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const pair = (
  one: number | "unknown",
  other: number | "unknown",
  kind: "twisted-pair" | "shielded-pair" | "multicore" = "twisted-pair",
) =>
  build()
    .vehicle("X1", { "1": "speaker-rear-left-plus GN", "2": "speaker-rear-left-minus GN/BK" })
    .part("speaker", "P1", { position: "rear-left" })
    .wire("X1.1", "P1.+", null, { length_m: one })
    .wire("X1.2", "P1.−", null, { length_m: other })
    .cable("WC1", kind, ["W1", "W2"]);
const lines = (second_m: number) =>
  build()
    .unit("X1", { "1": "line-rear-left-signal", "2": "line-rear-left-shield" })
    .module("A1", { role: "amplifier" })
    .receptacle("X2", "A1", { "1": "line-rear-left-signal takes", "2": "line-rear-left-shield takes" })
    .wire("X1.1", "X2.1", null, { length_m: 4 })
    .wire("X1.2", "X2.2", null, { length_m: second_m });

testRule(rule, {
  silent: [
    { name: "of one length", build: pair(2, 2) },
    { name: "five per cent exactly", build: pair(1.9, 2) },
    { name: "15 mm on a short one", build: pair(0.1, 0.115) },
    { name: "nobody has said", build: pair("unknown", 2) },
    { name: "cores of a cable that is no pair", build: pair(1, 2, "multicore") },
    { name: "line leads of one length", build: lines(4.1) },
  ],
  found: [
    {
      name: "half as long again",
      build: pair(2, 3),
      findings: [
        {
          at: ["W1", "W2"],
          says: "W2 (green with a black tracer) and W1 (green) are a pair, and the first is 1000 mm longer",
          fix: null,
        },
      ],
    },
    {
      name: "in a shielded pair",
      build: pair(2, 1.8, "shielded-pair"),
      findings: [{ at: ["W1", "W2"], fix: null }],
    },
    { name: "line leads that no cable holds", build: lines(5), findings: [{ at: ["W1", "W2"], fix: null }] },
  ],
});
