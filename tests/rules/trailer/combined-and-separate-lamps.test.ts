import rule from "../../../src/rules/rules/trailer/combined-and-separate-lamps.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const vehicle = () => build().vehicle("X1", { L: "stop-turn-left", R: "stop-turn-right" });
const trailer = () =>
  vehicle().unit("X2", { "1": "indicator-left", "4": "indicator-right", "6": "stop-lamp" });

testRule(rule, {
  silent: [
    {
      name: "combined to combined",
      build: vehicle()
        .unit("X2", { L: "stop-turn-left", R: "stop-turn-right" })
        .wire("X1.L", "X2.L")
        .wire("X1.R", "X2.R"),
    },
    {
      name: "apart to apart",
      build: build()
        .vehicle("X1", { "1": "indicator-left", "6": "stop-lamp" })
        .unit("X2", { "1": "indicator-left", "6": "stop-lamp" })
        .wire("X1.1", "X2.1")
        .wire("X1.6", "X2.6"),
    },
    {
      name: "a converter",
      build: trailer()
        .module("A1", {
          rows: { I: "stop-turn-left takes", T: "indicator-left gives", S: "stop-lamp gives" },
        })
        .wire("X1.L", "A1.I")
        .wire("A1.T", "X2.1")
        .wire("A1.S", "X2.6"),
    },
    { name: "nothing joined", build: trailer() },
  ],
  found: [
    {
      name: "combined outputs on indicators",
      build: trailer().wire("X1.L", "X2.1").path("X1.R", "XJ1", "X2.4"),
      findings: [{ at: ["X1.L", "X1.R", "X2.1", "X2.4"], says: "no converter", fix: null }],
    },
    {
      name: "a combined output on the stop lamp, behind a fuse",
      build: trailer().path("X1.L", "F1", "X2.6"),
      findings: [{ at: ["X1.L", "X2.6"], fix: null }],
    },
    {
      name: "stop and indicator by diodes into one lamp",
      build: build()
        .vehicle("X1", { "1": "indicator-left", "6": "stop-lamp" })
        .unit("X2", { L: "stop-turn-left" })
        .part("diode", "V1")
        .part("diode", "V2")
        .path("X1.1", "V1", "X2.L")
        .path("X1.6", "V2", "X2.L"),
      findings: [{ at: ["X1.1", "X1.6", "X2.L"], fix: null }],
    },
  ],
});
