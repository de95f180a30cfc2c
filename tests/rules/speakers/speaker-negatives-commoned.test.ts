import rule from "../../../src/rules/rules/speakers/speaker-negatives-commoned.ts";
import { build } from "../../build.ts";
import { across, speakers } from "../harnesses.ts";
import { testRule } from "../test-rule.ts";

const rows = {
  "1": "speaker-front-left-plus gives",
  "2": "speaker-front-left-minus gives",
  "4": "speaker-front-right-minus gives",
};
const amplifier = (outputs: "bridged" | "common-negative" | "unknown") =>
  build().module("A1", { role: "amplifier", outputs, rows });

testRule(rule, {
  silent: [
    {
      name: "each pair by itself",
      build: across(speakers(2), [
        [1, 1],
        [2, 2],
        [3, 3],
        [4, 4],
      ]),
    },
    {
      name: "a unit whose chart says that its negatives are one",
      build: amplifier("common-negative").path("A1.2", "XJ1").path("A1.4", "XJ1"),
    },
    {
      name: "one negative in two cavities of one unit",
      build: build()
        .unit("X4", { "2": "speaker-front-left-minus", "12": "speaker-front-left-minus" })
        .wire("X4.2", "X4.12"),
    },
    { name: "one negative on the frame: another rule's", build: amplifier("bridged").path("A1.2", "XE1") },
    { name: "each capped alone", build: amplifier("bridged").path("A1.2", "XC1").path("A1.4", "XC2") },
  ],
  found: [
    {
      name: "two negatives in one joint, nothing said of the outputs",
      build: amplifier("unknown").path("A1.2", "XJ1").path("A1.4", "XJ1"),
      findings: [{ at: ["A1.2", "A1.4"], says: "tied together", fix: null }],
    },
    {
      name: "two outputs on the one negative of an old vehicle",
      build: across(speakers(2), [
        [1, 1],
        [2, 2],
        [3, 3],
        [4, 2],
      ]),
      findings: [{ at: ["X4.2", "X4.4"], fix: null }],
    },
    {
      name: "two negatives that meet in a mated plug",
      build: amplifier("bridged")
        .vehicle("X1", { "1": "unknown", "2": "unknown" })
        .vehicle("X2", { "1": "unknown", "2": "unknown" })
        .mate("X1", "X2")
        .wire("A1.2", "X1.1")
        .wire("A1.4", "X1.2")
        .wire("X2.1", "X2.2"),
      findings: [{ at: ["A1.2", "A1.4"], fix: null }],
    },
  ],
});
