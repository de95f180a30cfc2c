import rule from "../../../src/rules/rules/signals/signal-beside-power.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

/** W1 signal, W2 its return; W3 to W5 a load of so many amperes. */
const van = (current_A: number, start = build()) =>
  start
    .module("A1", { role: "receiver", rows: { "1": "line-rear-left-signal", "2": "line-rear-left-shield" } })
    .module("A2", {
      role: "amplifier",
      rows: { "1": "line-rear-left-signal takes", "2": "line-rear-left-shield takes" },
    })
    .part("supply", "G1")
    .part("fuse", "F1", { rating_A: 40 })
    .part("load", "E1", { type: "heater", function: "constant-feed", current_A })
    .wire("A1.1", "A2.1", "WH")
    .wire("A1.2", "A2.2", "BK")
    .wire("G1.+", "F1.1", "RD", { area_mm2: 6 })
    .wire("F1.2", "E1.+", "RD", { area_mm2: 6 })
    .wire("E1.−", "G1.−", "BK", { area_mm2: 6 });

testRule(rule, {
  silent: [
    {
      name: "in runs of their own",
      build: van(20).run("B1", { length_m: 4 }, ["W1", "W2"]).run("B2", { length_m: 4 }, ["W4"]),
    },
    {
      name: "side by side for a hand's breadth, where they cross",
      build: van(20).run("B1", { length_m: 0.3 }, ["W1", "W4"]),
    },
    { name: "beside a lead of 4 A", build: van(4).run("B1", { length_m: 4 }, ["W1", "W2", "W4"]) },
    { name: "nobody has said how long the run is", build: van(20).run("B1", {}, ["W1", "W4"]) },
    { name: "no run drawn", build: van(20) },
    {
      name: "a shop allows more",
      build: van(20)
        .rules({ limits: [{ name: "signalBesidePower_m", value: 5 }] })
        .run("B1", { length_m: 4 }, ["W1", "W4"]),
    },
    {
      name: "a shield that is grounded carries no signal",
      build: van(20).path("A2.2", "XE1").run("B1", { length_m: 4 }, ["W2", "W4"]),
    },
  ],
  found: [
    {
      name: "four metres beside 20 A",
      build: van(20).run("B1", { length_m: 4 }, ["W1", "W2", "W4"]),
      findings: [{ at: ["W1", "W4"], says: "for 4 m; at most 0.3 m (a threshold of our own)", fix: null }],
    },
    {
      name: "two short runs add up",
      build: van(20).run("B1", { length_m: 0.2 }, ["W1", "W4"]).run("B2", { length_m: 0.2 }, ["W1", "W4"]),
      findings: [{ at: ["W1", "W4"], says: "for 0.4 m", fix: null }],
    },
    {
      name: "the run's length not told, the wires' are; feed and return of the load",
      build: van(20)
        .change("W1", { length_m: 3 })
        .change("W4", { length_m: 2 })
        .change("W5", { length_m: 5 })
        .run("B1", {}, ["W1", "W4", "W5"]),
      findings: [{ at: ["W1", "W4", "W5"], says: "for 3 m", fix: null }],
    },
    {
      name: "an antenna's cable in a 24 V van, the load worked by a switch",
      build: build()
        .settings({ systemVoltage_V: 24 })
        .vehicle("X1", { "1": "switched-feed fuse:15", "2": "ground", "3": "antenna-signal gives" })
        .unit("X2", { "1": "antenna-signal takes" })
        .part("switch", "S1", { operatedBy: "hand" })
        .part("load", "E1", { type: "motor", function: "switched-feed", current_A: 8 })
        .wire("X1.3", "X2.1")
        .path("X1.1", "S1", "E1.+")
        .wire("E1.−", "X1.2")
        .run("B1", { length_m: 1 }, ["W1", "W3"]),
      findings: [{ at: ["W1", "W3"], says: "up to 8 A", fix: null }],
    },
  ],
});
