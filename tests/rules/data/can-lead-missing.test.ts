import rule from "../../../src/rules/rules/data/can-lead-missing.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const boxes = () =>
  build()
    .vehicle("X1", { "3": "can-high OG/GN", "4": "can-low OG/BN" })
    .unit("X2", { "3": "can-high OG", "4": "can-low BN" });

testRule(rule, {
  silent: [
    { name: "both joined", build: boxes().wire("X1.3", "X2.3").wire("X1.4", "X2.4") },
    { name: "neither joined", build: boxes() },
    {
      name: "a bus of one lead: the chart knows no low",
      build: build().vehicle("X1", { "3": "can-high" }).unit("X2", { "3": "can-high" }).wire("X1.3", "X2.3"),
    },
    {
      name: "a second receptacle of the box brings the other lead",
      build: build()
        .vehicle("X1", { "3": "can-high", "4": "can-low" })
        .module("A1")
        .receptacle("X2", "A1", { "3": "can-high" })
        .receptacle("X3", "A1", { "4": "can-low" })
        .wire("X1.3", "X2.3")
        .wire("X1.4", "X3.4"),
    },
  ],
  found: [
    {
      name: "the low lead is not there",
      build: boxes().wire("X1.3", "X2.3"),
      findings: [{ at: ["X1.4", "X2.4"], says: "X2.4 CAN low", fix: "Join X2.4 to X1.4" }],
    },
    {
      name: "the high lead ends under a cap",
      build: boxes().wire("X1.4", "X2.4").wire("X2.3", "XC1"),
      findings: [{ at: ["X1.3", "X2.3"], fix: null }],
    },
    {
      name: "between modules, one lead through a joint only",
      build: build()
        .module("A1", { rows: { H: "can-high", L: "can-low" } })
        .module("A2", { rows: { H: "can-high", L: "can-low" } })
        .path("A1.H", "XJ1", "A2.H"),
      findings: [{ at: ["A1.L", "A2.L"], fix: "Join A1.L to A2.L" }],
    },
  ],
});
