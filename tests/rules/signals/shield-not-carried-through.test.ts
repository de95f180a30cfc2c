import rule from "../../../src/rules/rules/signals/shield-not-carried-through.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const boxes = () =>
  build()
    .module("A1", { role: "camera", rows: { "1": "video-signal gives", "2": "video-shield gives" } })
    .module("A2", { role: "display", rows: { "1": "video-signal takes", "2": "video-shield takes" } });
/** The cores joined at XJ1: W1 and W2. */
const cores = () => boxes().path("A1.1", "XJ1", "A2.1");

testRule(rule, {
  silent: [
    {
      name: "the shield goes across on a row of its own",
      build: cores()
        .path("A1.2", "XJ2", "A2.2")
        .cable("WC1", "coax", ["W1"], "W3")
        .cable("WC2", "coax", ["W2"], "W4"),
    },
    {
      name: "one length of cable",
      build: boxes().wire("A1.1", "A2.1").wire("A1.2", "A2.2").cable("WC1", "coax", ["W1"], "W2"),
    },
    {
      name: "two cables to two inputs of one box",
      build: build()
        .module("A1", {
          role: "receiver",
          rows: {
            "1": "line-rear-left-signal",
            "2": "line-rear-left-shield",
            "3": "line-rear-right-signal",
            "4": "line-rear-right-shield",
          },
        })
        .module("A2", {
          role: "amplifier",
          rows: {
            "1": "line-rear-left-signal takes",
            "2": "line-rear-left-shield takes",
            "3": "line-rear-right-signal takes",
            "4": "line-rear-right-shield takes",
          },
        })
        .wire("A1.1", "A2.1")
        .wire("A1.2", "A2.2")
        .wire("A1.3", "A2.3")
        .wire("A1.4", "A2.4")
        .cable("WC1", "shielded", ["W1"], "W2")
        .cable("WC2", "shielded", ["W3"], "W4"),
    },
    {
      name: "a short bare tail of a pair behind the joint",
      build: cores()
        .change("W2", { length_m: 0.1 })
        .path("A1.2", "XJ2", "A2.2")
        .path("XE1", "XC1")
        .cable("WC1", "shielded-pair", ["W1", "W3"], "W5"),
    },
    {
      name: "a long plain pair behind the joint that carries the return as well",
      build: cores()
        .change("W2", { length_m: 2 })
        .path("A1.2", "XJ2", "A2.2")
        .cable("WC1", "shielded", ["W1"], "W3"),
    },
    {
      name: "two shielded pairs, each with its shield on a stud",
      build: cores()
        .path("A1.2", "XJ2", "A2.2")
        .path("XC1", "XE1")
        .path("XC2", "XE2")
        .cable("WC1", "shielded-pair", ["W1", "W3"], "W5")
        .cable("WC2", "shielded-pair", ["W2", "W4"], "W6"),
    },
  ],
  found: [
    {
      name: "the cores joined, the shields capped on either side",
      build: cores()
        .path("A1.2", "XC1")
        .path("XC2", "A2.2")
        .cable("WC1", "coax", ["W1"], "W3")
        .cable("WC2", "coax", ["W2"], "W4"),
      findings: [{ at: ["W3", "W4"], says: "WC1 and WC2 are joined, at XJ1", fix: null }],
    },
    {
      name: "by mated plugs of which only the cores go through",
      build: boxes()
        .vehicle("X1", { "1": "unknown", "2": "unknown" })
        .vehicle("X2", { "1": "unknown" })
        .mate("X1", "X2")
        .wire("A1.1", "X1.1")
        .wire("A1.2", "X1.2")
        .wire("X2.1", "A2.1")
        .path("XC1", "A2.2")
        .cable("WC1", "shielded", ["W1"], "W2")
        .cable("WC2", "shielded", ["W3"], "W4"),
      findings: [{ at: ["W2", "W4"], fix: null }],
    },
    {
      name: "a shielded pair of which one length has its shield nowhere",
      build: cores()
        .path("A1.2", "XJ2", "A2.2")
        .path("XC1", "XC2")
        .path("XC3", "XE2")
        .cable("WC1", "shielded-pair", ["W1", "W3"], "W5")
        .cable("WC2", "shielded-pair", ["W2", "W4"], "W6"),
      findings: [{ at: ["W5", "W6"], fix: null }],
    },
    {
      name: "two metres of plain wire behind the joint",
      build: cores().change("W2", { length_m: 2 }).path("A1.2", "XJ2").cable("WC1", "shielded", ["W1"], "W3"),
      findings: [{ at: ["W3", "W2", "XJ1"], says: "for 2 m", fix: null }],
    },
    {
      name: "both halves called one cable, the shield cut off behind the camera",
      build: cores().wire("A1.2", "loose").cable("WC1", "coax", ["W1", "W2"], "W3"),
      findings: [{ at: ["W3", "A2.2"], says: "does not reach A2.2 video shield", fix: null }],
    },
  ],
});
