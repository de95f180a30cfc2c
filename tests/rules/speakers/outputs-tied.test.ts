import rule from "../../../src/rules/rules/speakers/outputs-tied.ts";
import { build } from "../../build.ts";
import { across, feeds, joined, speakers } from "../harnesses.ts";
import { testRule } from "../test-rule.ts";

testRule(rule, {
  silent: [
    {
      name: "two spares under one cap: another rule's",
      build: build()
        .unit("X4", { "1": "speaker-rear-left-plus spare", "2": "speaker-rear-left-minus spare" })
        .path("X4.1", "XC1")
        .path("X4.2", "XC1"),
    },
    { name: "one output to each lead", build: joined() },
    {
      name: "one output, two speakers",
      build: across(speakers(1), [
        [1, 1],
        [2, 2],
      ])
        .part("speaker", "P1", { position: "front-left" })
        .wire("XJ1", "P1.+")
        .wire("XJ2", "P1.−"),
    },
    { name: "constant and switched: another rule's", build: feeds().wire("X1.A4", "X1.A7") },
    {
      name: "negatives of one unit: another rule's",
      build: build()
        .unit("X4", { "2": "speaker-front-left-minus", "4": "speaker-front-right-minus" })
        .wire("X4.2", "X4.4"),
    },
    {
      name: "one function in two cavities of one vehicle",
      build: build().vehicle("X1", { "5": "illumination", "6": "illumination" }).wire("X1.5", "X1.6"),
    },
    {
      name: "two switches to ground on one lead",
      build: build()
        .vehicle("X1", { "5": "mute gives" })
        .module("A1", { rows: { "1": "mute gives" } })
        .wire("X1.5", "A1.1"),
    },
    {
      name: "two triggers, each through a diode",
      build: build()
        .vehicle("X1", { "3": "reverse", "4": "camera-trigger gives" })
        .unit("X2", { "3": "camera-trigger" })
        .part("diode", "R1")
        .part("diode", "R2")
        .path("X1.3", "R1", "X2.3")
        .path("X1.4", "R2", "X2.3"),
    },
  ],
  found: [
    {
      name: "the receiver into a factory amplifier's output",
      build: build()
        .module("A1", { side: "vehicle", role: "amplifier", rows: { "1": "speaker-front-left-plus gives" } })
        .unit("X4", { "1": "speaker-front-left-plus WH" })
        .wire("X4.1", "A1.1"),
      findings: [{ at: ["A1.1", "X4.1"], says: "X4.1 speaker front left + (white)", fix: null }],
    },
    {
      name: "the two leads of one output",
      build: speakers(1).wire("X4.1", "X4.2"),
      findings: [{ at: ["X4.1", "X4.2"], fix: null }],
    },
    {
      name: "antenna power with the vehicle's switched lead",
      build: feeds({}, { "5": "antenna-power BU" }).wire("X2.5", "X1.A7"),
      findings: [{ at: ["X1.A7", "X2.5"], fix: null }],
    },
  ],
});
