import rule from "../../../src/rules/rules/relays/lost-ground-back-feeds.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const rear = () =>
  build()
    .vehicle("X1", { "1": "stop-lamp fuse:15", "2": "tail-lamps fuse:7.5", "3": "ground" })
    .part("load", "E1", { type: "lamp", function: "stop-lamp", current_A: 1.75 })
    .part("load", "E2", { type: "lamp", function: "tail-lamps", current_A: 0.42 })
    .wire("X1.1", "E1.+")
    .wire("X1.2", "E2.+");
const more = () =>
  rear()
    .part("load", "E3", { type: "lamp", function: "tail-lamps", current_A: 1.25 })
    .wire("X1.2", "E3.+")
    .wire("E3.−", "XE2");

testRule(rule, {
  silent: [
    { name: "a ground for the stop lamp alone", build: more().wire("E1.−", "XE1").wire("E2.−", "X1.3") },
    {
      name: "one ground for all: nothing would glow elsewhere",
      build: rear().path("E1.−", "XJ1", "XE1").wire("E2.−", "XJ1"),
    },
    {
      name: "two ways to ground",
      build: more().path("E1.−", "XJ1", "XE1").wire("E2.−", "XJ1").wire("XJ1", "X1.3"),
    },
    {
      name: "loads of one feed",
      build: build()
        .vehicle("X1", { "1": "stop-lamp fuse:15" })
        .part("load", "E1", { type: "lamp", function: "stop-lamp", current_A: 1.75 })
        .part("load", "E2", { type: "lamp", function: "stop-lamp", current_A: 1.75 })
        .wire("X1.1", "E1.+")
        .wire("X1.1", "E2.+")
        .path("E1.−", "XJ1", "XE1")
        .wire("E2.−", "XJ1"),
    },
    {
      name: "no safety lamp on the shared ground",
      build: build()
        .vehicle("X1", { "1": "work-lamp gives", "2": "tail-lamps" })
        .part("load", "E1", { type: "lamp", function: "work-lamp", current_A: 4 })
        .part("load", "E2", { type: "lamp", function: "tail-lamps", current_A: 0.4 })
        .part("load", "E3", { type: "lamp", function: "tail-lamps", current_A: 0.4 })
        .wire("X1.1", "E1.+")
        .wire("X1.2", "E2.+")
        .wire("X1.2", "E3.+")
        .path("E1.−", "XJ1", "XE1")
        .wire("E2.−", "XJ1")
        .wire("E3.−", "XE2"),
    },
  ],
  found: [
    {
      // The figures of the worked sum: node 10.7 V, tail feed 2.7 V, stop lamp 1.9 V, with filaments as fixed resistors.
      name: "a ground that is not there",
      build: more().wire("E1.−", "XJ1").wire("E2.−", "XJ1"),
      findings: [{ at: ["E1.−", "E2.−"], says: "reaches no frame", fix: null }],
    },
    {
      name: "a stud that may open",
      build: more().wire("E1.−", "XE1").wire("E2.−", "XE1"),
      findings: [{ at: ["E1.−", "E2.−", "XE1"], severity: "weak", says: "If XE1 opened", fix: null }],
    },
    {
      name: "the one lead to the vehicle's ground",
      build: more().path("E1.−", "XJ1", "X1.3").wire("E2.−", "XJ1"),
      findings: [{ at: ["E1.−", "E2.−", "W6"], severity: "weak", says: "If W6 opened", fix: null }],
    },
  ],
});
