import rule from "../../../src/rules/rules/control/one-lead-two-jobs.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const screen = () =>
  build()
    .vehicle("X1", { "1": "parking-brake GN/WH", "2": "reverse GN fuse:10", "3": "illumination GY fuse:5" })
    .unit("X2", {
      "9": "parking-brake GN",
      "10": "mute BN",
      "11": "reverse PK",
      "12": "camera-trigger GY",
      "13": "illumination OG",
    });

testRule(rule, {
  silent: [
    { name: "each on its own", build: screen().wire("X1.1", "X2.9").wire("X1.2", "X2.11") },
    { name: "two inputs for reverse on one lead", build: screen().path("X1.2", "X2.11", "X2.12") },
    {
      name: "an amplifier and an antenna on one turn-on",
      build: build()
        .unit("X2", { "5": "amplifier-turn-on 0.5A" })
        .module("A1", { rows: { REM: "amplifier-turn-on takes" } })
        .vehicle("X1", { A5: "antenna-power" })
        .path("X2.5", "A1.REM", "X1.A5"),
    },
    {
      name: "a diode for each",
      build: screen()
        .part("diode", "V1")
        .part("diode", "V2")
        .path("X1.2", "XJ1", "V1", "X2.11")
        .path("XJ1", "V2", "X2.13"),
    },
    {
      name: "both on ground for good, which rules of their own tell",
      build: screen().path("X2.9", "XE1").path("X2.10", "XE1"),
    },
    {
      name: "lamps of a trailer's socket",
      build: build().unit("X5", { "1": "stop-lamp", "2": "tail-lamps" }).wire("X5.1", "X5.2"),
    },
    {
      name: "one of the two is left out",
      build: screen().unit("X6", { "1": "mute spare" }).path("X1.1", "X2.9", "X6.1"),
    },
  ],
  found: [
    {
      name: "mute on the parking brake's lead",
      build: screen().path("X1.1", "X2.9", "X2.10"),
      findings: [{ at: ["X2.9", "X2.10"], says: "hang on one lead", fix: null }],
    },
    {
      name: "illumination and reverse in one joint",
      build: screen().path("X1.2", "XJ1", "X2.11").path("XJ1", "X2.13"),
      findings: [{ at: ["X2.11", "X2.13"], fix: null }],
    },
    {
      name: "two boxes, through mated couplers",
      build: screen()
        .module("A1", { rows: { MUTE: "mute takes" } })
        .unit("X7", { "1": "unknown" })
        .unit("X8", { "1": "unknown" })
        .mate("X7", "X8")
        .wire("A1.MUTE", "X7.1")
        .path("X8.1", "X2.13", "X1.3"),
      findings: [{ at: ["A1.MUTE", "X2.13"], fix: null }],
    },
  ],
});
