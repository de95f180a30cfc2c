import rule from "../../../src/rules/rules/speakers/speaker-lead-grounded.ts";
import { build } from "../../build.ts";
import { across, speakers } from "../harnesses.ts";
import { testRule } from "../test-rule.ts";

const rows = { "1": "speaker-front-left-plus gives", "2": "speaker-front-left-minus gives" };
const amplifier = (outputs: "bridged" | "common-negative" | "unknown") =>
  build().module("A1", { role: "amplifier", outputs, rows });
const withSpeaker = (outputs: "bridged" | "common-negative") =>
  amplifier(outputs).part("speaker", "P1", { position: "front-left" }).wire("A1.1", "P1.+");

testRule(rule, {
  silent: [
    { name: "a speaker on its own pair", build: withSpeaker("bridged").wire("A1.2", "P1.−") },
    {
      name: "a unit whose chart says that its negatives are one",
      build: amplifier("common-negative").path("A1.2", "XE1"),
    },
    {
      name: "a speaker to the frame on such a unit",
      build: withSpeaker("common-negative").path("P1.−", "XE1"),
    },
    {
      name: "capped, with a ground elsewhere",
      build: amplifier("bridged").path("A1.2", "XC1").path("A1.1", "XC2").part("ground", "XE1"),
    },
    {
      name: "a speaker whose other lead is not joined yet",
      build: withSpeaker("bridged"),
    },
    {
      name: "a vehicle's pair that nothing drives, one lead on the frame",
      build: speakers(1).path("X3.2", "XE1"),
    },
  ],
  found: [
    {
      name: "a negative on the frame",
      build: amplifier("bridged").path("A1.2", "XE1"),
      findings: [{ at: ["A1.2", "XE1"], says: "is grounded, at XE1", fix: null }],
    },
    {
      name: "nothing said of the outputs, in a joint",
      build: amplifier("unknown").path("A1.2", "XJ1", "XE1"),
      findings: [{ at: ["A1.2", "XE1"], fix: null }],
    },
    {
      name: "a vehicle whose speaker return is its ground",
      build: speakers(1).vehicle("X5", { "1": "ground BN" }).wire("X4.2", "X5.1"),
      findings: [{ at: ["X4.2", "X5.1"], fix: null }],
    },
    {
      name: "a plus on the frame is no better",
      build: amplifier("bridged").path("A1.1", "XE1"),
      findings: [{ at: ["A1.1", "XE1"], fix: null }],
    },
    {
      name: "through a fuse",
      build: amplifier("bridged").path("A1.2", "F1", "XE1"),
      findings: [{ at: ["A1.2", "XE1"], fix: null }],
    },
    {
      name: "the far lead of a speaker on the frame, the output's minus unused",
      build: withSpeaker("bridged").path("P1.−", "XE1").path("A1.2", "XC1"),
      findings: [{ at: ["P1.−", "XE1"], says: "P1.− speaker front left − is grounded", fix: null }],
    },
    {
      name: "a vehicle's pair with its minus on the battery",
      build: across(speakers(1), [[1, 1]])
        .part("supply", "G1")
        .wire("X3.2", "G1.−"),
      findings: [{ at: ["X3.2", "G1.−"], fix: null }],
    },
    {
      name: "output and speaker together",
      build: withSpeaker("bridged").path("P1.−", "XJ1", "A1.2").wire("XJ1", "XE1"),
      findings: [{ at: ["A1.2", "XE1"], fix: null }],
    },
  ],
});
