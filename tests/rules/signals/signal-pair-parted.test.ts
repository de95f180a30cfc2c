import rule from "../../../src/rules/rules/signals/signal-pair-parted.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

/** A line lead W1 and its return W2. */
const line = () =>
  build()
    .module("A1", { role: "receiver", rows: { "1": "line-rear-left-signal", "2": "line-rear-left-shield" } })
    .module("A2", {
      role: "amplifier",
      rows: { "1": "line-rear-left-signal takes", "2": "line-rear-left-shield takes" },
    })
    .wire("A1.1", "A2.1")
    .wire("A1.2", "A2.2");

testRule(rule, {
  silent: [
    { name: "core and shield of one cable", build: line().cable("WC1", "shielded", ["W1"], "W2") },
    {
      name: "two cores of one cable, in one run",
      build: line().cable("WC1", "twisted-pair", ["W1", "W2"]).run("B1", {}, ["W1", "W2"]),
    },
    { name: "no cable and no run drawn", build: line() },
    { name: "a coaxial cable whose shield is not drawn in it", build: line().cable("WC1", "coax", ["W1"]) },
    { name: "one of them in a run, of the other nothing is said", build: line().run("B1", {}, ["W1"]) },
    {
      name: "the return is not joined at all: another rule's",
      build: build()
        .module("A1", {
          role: "receiver",
          rows: { "1": "line-rear-left-signal", "2": "line-rear-left-shield" },
        })
        .module("A2", {
          role: "amplifier",
          rows: { "1": "line-rear-left-signal takes", "2": "line-rear-left-shield takes" },
        })
        .wire("A1.1", "A2.1")
        .path("A1.2", "XC1")
        .cable("WC1", "shielded-pair", ["W1"]),
    },
    {
      name: "one stretch of the run in common",
      build: line().run("B1", {}, ["W1", "W2"]).run("B2", {}, ["W1"]),
    },
  ],
  found: [
    {
      name: "the return beside the cable",
      build: line().cable("WC1", "multicore", ["W1"]),
      findings: [
        {
          at: ["A1.1", "A1.2", "W1", "W2"],
          says: "lies in WC1, and its return in a wire of its own",
          fix: null,
        },
      ],
    },
    {
      name: "in two cables",
      build: line().cable("WC1", "multicore", ["W1"]).cable("WC2", "multicore", ["W2"]),
      findings: [{ at: ["A1.1", "A1.2", "W1", "W2"], says: "and its return in WC2", fix: null }],
    },
    {
      name: "down the two sides of the van, a picture through joints",
      build: build()
        .module("A1", { role: "camera", rows: { "1": "video-signal gives", "2": "video-shield gives" } })
        .module("A2", { role: "display", rows: { "1": "video-signal takes", "2": "video-shield takes" } })
        .path("A1.1", "XJ1", "A2.1")
        .path("A1.2", "XJ2", "A2.2")
        .run("B1", {}, ["W1", "W2"])
        .run("B2", {}, ["W3", "W4"]),
      findings: [
        {
          at: ["A1.1", "A1.2", "W1", "W2", "W3", "W4"],
          says: "lies in run B1, and its return in run B2",
          fix: null,
        },
      ],
    },
  ],
});
