import rule from "../../../src/rules/rules/data/can-leads-exchanged.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const boxes = () =>
  build()
    .vehicle("X1", { "3": "can-high OG/GN", "4": "can-low OG/BN" })
    .unit("X2", { "3": "can-high OG", "4": "can-low BN" });

testRule(rule, {
  silent: [
    { name: "each to its own", build: boxes().wire("X1.3", "X2.3").wire("X1.4", "X2.4") },
    { name: "nothing joined", build: boxes() },
    {
      name: "terminators lie across the pair",
      build: boxes()
        .wire("X1.3", "X2.3")
        .wire("X1.4", "X2.4")
        .part("resistor", "R1", { resistance_ohm: 120 })
        .path("X2.3", "R1", "X2.4"),
    },
    {
      name: "the module's first bus on the vehicle's second",
      build: build()
        .vehicle("X1", { "3": "second-can-high", "4": "second-can-low" })
        .unit("X2", { "3": "can-high", "4": "can-low" })
        .wire("X1.3", "X2.3")
        .wire("X1.4", "X2.4"),
    },
  ],
  found: [
    {
      name: "crosswise, wire by wire",
      build: boxes().wire("X1.3", "X2.4").wire("X1.4", "X2.3"),
      findings: [
        {
          at: ["X1.3", "X1.4", "X2.3", "X2.4"],
          says: "CAN high",
          fix: "Exchange the two leads at X2.4 and X2.3",
        },
      ],
    },
    {
      name: "crosswise, at the joints",
      build: boxes().path("X1.3", "XJ1", "X2.4").path("X1.4", "XJ2", "X2.3"),
      findings: [{ at: ["X1.3", "X1.4", "X2.3", "X2.4"], fix: "Exchange the two leads at XJ1 and XJ2" }],
    },
    {
      name: "between two modules, through a mated plug",
      build: build()
        .module("A1", { role: "interface", rows: { H: "can-high", L: "can-low" } })
        .module("A2", { role: "display", rows: { H: "can-high", L: "can-low" } })
        .unit("X3", { "1": "unknown", "2": "unknown" })
        .unit("X4", { "1": "unknown", "2": "unknown" })
        .mate("X3", "X4")
        .wire("A1.H", "X3.1")
        .wire("A1.L", "X3.2")
        .wire("X4.1", "A2.L")
        .wire("X4.2", "A2.H"),
      findings: [{ at: ["A1.H", "A1.L", "A2.H", "A2.L"], fix: "Exchange the two leads at A1.H and A1.L" }],
    },
    {
      name: "one lead of the pair on the other half",
      build: boxes().wire("X1.3", "X2.4"),
      findings: [{ at: ["X1.3", "X1.4", "X2.3", "X2.4"], fix: null }],
    },
    {
      name: "high and low of one box together",
      build: boxes().wire("X1.3", "X2.3").wire("X1.4", "X2.4").wire("X1.3", "X1.4"),
      findings: [{ at: ["X1.3", "X2.4"], fix: null }],
    },
  ],
});
