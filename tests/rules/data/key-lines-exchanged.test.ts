import rule from "../../../src/rules/rules/data/key-lines-exchanged.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const boxes = () =>
  build()
    .vehicle("X1", { "5": "steering-key-1 gives", "6": "steering-key-2 gives" })
    .unit("X2", { "5": "steering-key-1 takes", "6": "steering-key-2 takes" });

testRule(rule, {
  silent: [
    { name: "each to its number", build: boxes().wire("X1.5", "X2.5").wire("X1.6", "X2.6") },
    { name: "one line alone, on the other input", build: boxes().wire("X1.5", "X2.6") },
    {
      name: "a module in between that speaks on one line",
      build: boxes()
        .module("A1", { rows: { I: "steering-key-1 takes", O: "steering-key-2 gives" } })
        .wire("X1.5", "A1.I")
        .wire("A1.O", "X2.5"),
    },
  ],
  found: [
    {
      name: "crosswise",
      build: boxes().wire("X1.5", "X2.6").wire("X1.6", "X2.5"),
      findings: [
        {
          at: ["X1.5", "X1.6", "X2.5", "X2.6"],
          says: "exchanged",
          fix: "Exchange the two leads at X2.5 and X2.6",
        },
      ],
    },
    {
      name: "crosswise, through joints",
      build: boxes().path("X1.5", "XJ1", "X2.6").path("X1.6", "XJ2", "X2.5"),
      findings: [{ at: ["X1.5", "X1.6", "X2.5", "X2.6"], fix: "Exchange the two leads at XJ2 and XJ1" }],
    },
  ],
});
