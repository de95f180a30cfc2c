import rule from "../../../src/rules/rules/data/data-lead-on-feed.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const boxes = () =>
  build()
    .vehicle("X1", {
      "1": "constant-feed RD fuse:5",
      "2": "switched-feed YE fuse:5",
      "4": "lin",
      "5": "can-high",
    })
    .unit("X2", { "1": "constant-feed RD", "4": "lin", "5": "can-high" });

testRule(rule, {
  silent: [
    { name: "data to data", build: boxes().wire("X1.4", "X2.4").wire("X1.5", "X2.5") },
    {
      name: "a pull-up of 1 kΩ",
      build: boxes()
        .wire("X1.4", "X2.4")
        .part("resistor", "R1", { resistance_ohm: 1000 })
        .path("X1.1", "R1", "X2.4"),
    },
    {
      name: "a smaller pull-up, through a diode",
      build: boxes()
        .wire("X1.4", "X2.4")
        .part("diode", "V1")
        .part("resistor", "R1", { resistance_ohm: 500 })
        .path("X1.1", "V1", "R1", "X2.4"),
    },
    { name: "the feed of the same box beside it", build: boxes().wire("X1.1", "X2.1").wire("X1.4", "X2.4") },
  ],
  found: [
    {
      name: "on the constant feed",
      build: boxes().path("X1.4", "XJ1", "X2.4").wire("X1.1", "XJ1.1"),
      findings: [{ at: ["X1.1", "X1.4", "X2.4"], says: "battery volts", fix: null }],
    },
    {
      name: "on the switched feed, through a fuse",
      build: boxes().path("X1.2", "F1", "X2.5"),
      findings: [{ at: ["X1.2", "X2.5"], fix: null }],
    },
    {
      name: "on the output of another module, through a switch",
      build: boxes()
        .module("A1", { rows: { O: "switched-feed gives" } })
        .path("A1.O", "S1", "X2.5"),
      findings: [{ at: ["A1.O", "X2.5"], fix: null }],
    },
  ],
});
