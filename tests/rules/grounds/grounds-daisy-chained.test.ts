import rule from "../../../src/rules/rules/grounds/grounds-daisy-chained.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const size = (area_mm2: number, length_m: number) => ({ area_mm2, length_m });
const units = (amps = "8A", second = "0.5A") =>
  build()
    .vehicle("X1", { "1": "constant-feed fuse:10", "2": "constant-feed fuse:5" })
    .module("A1", { rows: { "+": `constant-feed ${amps}`, GND: "ground" } })
    .module("A2", {
      rows: { "+": `constant-feed ${second}`, GND: "ground", L: "line-front-left-signal takes" },
    })
    .part("ground", "XE1", { surface: "bare-metal" })
    .wire("X1.1", "A1.+", "RD", size(1.5, 1))
    .wire("X1.2", "A2.+", "RD", size(1.5, 1));
const lamps = () =>
  build()
    .vehicle("X1", { "1": "switched-feed fuse:10" })
    .part("ground", "XE1", { surface: "bare-metal" })
    .part("load", "E1", { type: "lamp", current_A: 5 })
    .part("load", "E2", { type: "lamp", current_A: 5 })
    .wire("X1.1", "E1.+")
    .wire("X1.1", "E2.+");

testRule(rule, {
  silent: [
    {
      name: "a lead each to one stud",
      build: units().wire("A1.GND", "XE1", "BK", size(1, 1)).wire("A2.GND", "XE1", "BK", size(1, 1)),
    },
    {
      name: "two small units on one lead",
      build: units("0.3A", "0.3A")
        .wire("A1.GND", "XE1", "BK", size(1.5, 1))
        .wire("A2.GND", "A1.GND", "BK", size(1, 1)),
    },
    {
      name: "a joint a hand's breadth from the stud, of thick wire",
      build: units().path("A1.GND", "XJ1", "XE1").path("A2.GND", "XJ1").change("W4", size(16, 0.1)),
    },
    {
      name: "a joint and a lead of which no length is stated",
      build: units("2A").path("A1.GND", "XJ1", "XE1").path("A2.GND", "XJ1"),
    },
    {
      name: "two ways to ground",
      build: units()
        .part("ground", "XE2", { surface: "bare-metal" })
        .wire("A2.GND", "A1.GND", "BK", size(1, 1))
        .wire("A1.GND", "XE1", "BK", size(1, 1))
        .wire("A2.GND", "XE2", "BK", size(1, 1)),
    },
    {
      name: "lamps on one lead only burn a little less bright",
      build: lamps().path("E1.−", "XJ1", "XE1").path("E2.−", "XJ1").change("W4", size(1, 2)),
    },
    {
      name: "chained, and no ground at all: another rule tells",
      build: units().wire("A1.GND", "A2.GND", "BK", size(1, 1)),
    },
  ],
  found: [
    {
      name: "the second by the first",
      build: units().wire("A1.GND", "XE1", "BK", size(1, 1)).wire("A2.GND", "A1.GND", "BK", size(1, 1)),
      findings: [
        { at: ["A1.GND", "A2.GND", "W3"], says: "share W3 (black) on the way to ground", fix: null },
      ],
    },
    {
      name: "in a joint far from the stud, thin",
      build: units().path("A1.GND", "XJ1", "XE1").path("A2.GND", "XJ1").change("W4", size(1, 2)),
      findings: [{ at: ["A1.GND", "A2.GND", "W4"], fix: null }],
    },
    {
      name: "a line-level unit with a small drop",
      build: units("2A")
        .module("A3", { rows: { L: "line-front-left-signal gives" } })
        .wire("A3.L", "A2.L")
        .wire("A1.GND", "XE1", "BK", size(2.5, 1))
        .wire("A2.GND", "A1.GND", "BK", size(1, 1)),
      findings: [{ at: ["A1.GND", "A2.GND", "W4"], says: "mV", fix: null }],
    },
    {
      name: "a heater at a receiver's ground, to the vehicle's lead, by connectors",
      build: build()
        .vehicle("X1", { "1": "constant-feed fuse:20", "2": "ground" })
        .unit("X2", { "1": "constant-feed 1A", "2": "ground" })
        .part("load", "E1", { type: "heater", current_A: 10 })
        .wire("X1.1", "X2.1")
        .wire("X1.1", "E1.+")
        .wire("X2.2", "X1.2", "BK", size(1.5, 2))
        .wire("E1.−", "X2.2", "BK", size(1.5, 1)),
      findings: [{ at: ["E1.−", "W3", "X2.2"], fix: null }],
    },
  ],
});
