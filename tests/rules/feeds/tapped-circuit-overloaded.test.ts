import rule from "../../../src/rules/rules/feeds/tapped-circuit-overloaded.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const socket = (current_A: number | "unknown", fuse: string = "fuse:10") =>
  build()
    .vehicle("X1", { "1": `switched-feed YE ${fuse}`, "2": "ground" })
    .part("load", "E1", {
      type: "other",
      current_A,
      behaviour: "constant-current",
      function: "switched-feed",
    })
    .path("X1.1", "XJ1", "E1.+")
    .path("E1.−", "XJ2", "X1.2");

testRule(rule, {
  silent: [
    { name: "8 A behind 10 A", build: socket(8) },
    { name: "no fuse stated", build: socket(30, "") },
    { name: "no current stated", build: socket("unknown") },
    {
      name: "only triggered here: a relay feeds the load",
      build: socket(5)
        .part("supply", "G1")
        .path("G1.−", "XE1")
        .part("fuse", "F1", { rating_A: 30 })
        .part("relay", "K1", { poles: "make" })
        .part("load", "E2", { current_A: 20, behaviour: "constant-current" })
        .path("G1.+", "F1", "K1.30")
        .path("K1.87", "E2.+")
        .path("E2.−", "XE1")
        .path("XJ1", "K1.86")
        .path("K1.85", "XJ2"),
    },
  ],
  found: [
    {
      name: "12 A behind 10 A",
      build: socket(12),
      findings: [{ at: ["X1.1"], says: "gives 12 A to E1", fix: null }],
    },
    {
      name: "9 A behind 10 A",
      build: socket(9),
      findings: [{ at: ["X1.1"], severity: "weak", says: "80 % of that is the most", fix: null }],
    },
    {
      name: "two loads, one behind a fuse and a switch of its own",
      build: socket(6)
        .part("fuse", "F1", { rating_A: 10 })
        .part("load", "E2", { current_A: 6, behaviour: "constant-current", function: "switched-feed" })
        .path("XJ1", "F1", "S1", "E2.+")
        .path("E2.−", "XJ2"),
      findings: [{ at: ["X1.1"], says: "E1 and E2", fix: null }],
    },
    {
      name: "a unit by its plug",
      build: build()
        .vehicle("X1", { "1": "constant-feed fuse:5", "2": "ground" })
        .module("A1", { role: "display", wakes: "by-lead" })
        .receptacle("X2", "A1", { "1": "constant-feed 7A", "2": "ground" })
        .path("X1.1", "X2.1")
        .path("X1.2", "X2.2"),
      findings: [{ at: ["X1.1"], fix: null }],
    },
  ],
});
