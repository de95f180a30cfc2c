import rule from "../../../src/rules/rules/feeds/supplies-joined.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const two = () =>
  build()
    .part("supply", "G1")
    .part("supply", "G2")
    .part("load", "E1")
    .path("E1.−", "XE1", "G1.−")
    .path("G2.−", "XE1");

testRule(rule, {
  silent: [
    {
      name: "through a relay",
      build: two()
        .part("relay", "K1", { poles: "make" })
        .path("G1.+", "F1", "K1.30")
        .path("K1.87", "F2", "G2.+"),
    },
    { name: "through a diode", build: two().part("diode", "D1").path("G1.+", "F1", "D1", "F2", "G2.+") },
    {
      name: "through a charger",
      build: two()
        .module("A1", { role: "charger", rows: { "1": "constant-feed", "2": "constant-feed gives" } })
        .path("G1.+", "F1", "A1.1")
        .path("A1.2", "F2", "G2.+"),
    },
    { name: "each with loads of its own", build: two().path("G1.+", "F1", "E1.+") },
    {
      name: "in a row for 24 V",
      build: build().part("supply", "G1").part("supply", "G2").path("G1.+", "G2.−"),
    },
    { name: "a switch that somebody turns", build: two().path("G1.+", "F1", "S1", "F2", "G2.+") },
  ],
  found: [
    {
      name: "post to post",
      build: two().path("G1.+", "G2.+"),
      findings: [{ at: ["G1.+", "G2.+"], says: "are joined at all times.", fix: null }],
    },
    {
      name: "through a fuse at each",
      build: two().path("G1.+", "F1", "XJ1", "F2", "G2.+").path("XJ1", "E1.+"),
      findings: [{ at: ["G1.+", "G2.+"], says: "with nothing between them but fuses", fix: null }],
    },
    {
      name: "through a mated plug, three of them",
      build: two()
        .part("supply", "G3")
        .unit("X1", { "1": "unknown none" })
        .unit("X2", { "1": "unknown none" })
        .mate("X1", "X2")
        .path("G1.+", "X1.1")
        .path("X2.1", "G2.+")
        .path("X2.1", "F1", "G3.+"),
      findings: [{ at: ["G1.+", "G2.+", "G3.+"], fix: null }],
    },
  ],
});
