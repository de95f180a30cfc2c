import rule from "../../../src/rules/rules/data/key-line-on-battery.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const boxes = () =>
  build()
    .vehicle("X1", {
      "2": "switched-feed YE fuse:5",
      "5": "steering-key-1 GY gives",
      "7": "sensor-supply gives",
    })
    .unit("X2", { "2": "switched-feed RD", "5": "steering-key-1 GY takes", "6": "steering-key-2 takes" });

testRule(rule, {
  silent: [
    { name: "keys and radio", build: boxes().wire("X1.5", "X2.5") },
    {
      name: "a pull-up from the radio's few volts",
      build: boxes()
        .wire("X1.5", "X2.5")
        .part("resistor", "R1", { resistance_ohm: 2200 })
        .path("X1.7", "R1", "X2.5"),
    },
    {
      name: "a ladder to ground",
      build: boxes()
        .part("resistor", "R1", { resistance_ohm: 330 })
        .part("switch", "S1")
        .path("X2.6", "S1", "R1", "XE1"),
    },
  ],
  found: [
    {
      name: "on the switched feed, at a joint",
      build: boxes().path("X1.2", "XJ1", "X2.2").wire("XJ1.2", "X2.5"),
      findings: [{ at: ["X1.2", "X2.5"], says: "battery volts", fix: null }],
    },
    {
      name: "with the keys still on it",
      build: boxes().wire("X1.5", "X2.5").wire("X1.2", "X2.5"),
      findings: [{ at: ["X1.2", "X1.5", "X2.5"], fix: null }],
    },
    {
      name: "a button that sends the feed",
      build: boxes().path("X1.2", "F1", "S1", "X2.6"),
      findings: [{ at: ["X1.2", "X2.6"], fix: null }],
    },
  ],
});
