import rule from "../../../src/rules/rules/relays/relay-holds-itself.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const bench = () =>
  build()
    .vehicle("X1", { "1": "constant-feed fuse:20", "2": "ignition-feed fuse:10", "3": "ground" })
    .part("relay", "K1", { poles: "make", suppression: "resistor" })
    .part("diode", "V1")
    .part("load", "E1", { type: "motor", function: "blower", current_A: 5 })
    .wire("K1.85", "X1.3")
    .wire("E1.−", "X1.3");
const radio = (input: string) =>
  bench()
    .module("A1", {
      role: "receiver",
      wakes: "by-lead",
      rows: { C: "constant-feed takes", S: "switched-feed takes", R: "amplifier-turn-on gives" },
    })
    .wire("X1.1", "A1.C")
    .wire("X1.1", "K1.30")
    .wire("A1.R", "K1.86")
    .wire("K1.87", "E1.+")
    .path(input, "A1.S");

testRule(rule, {
  silent: [
    {
      name: "coil and load apart",
      build: bench().wire("X1.1", "K1.30").wire("X1.2", "K1.86").wire("K1.87", "E1.+"),
    },
    {
      name: "it holds, but only while the key is on",
      build: bench()
        .wire("X1.2", "K1.30")
        .path("X1.1", "S1", "XJ1", "K1.86")
        .path("K1.87", "XJ1")
        .wire("K1.87", "E1.+"),
    },
    { name: "the radio wakes with the key", build: radio("X1.2") },
    {
      name: "a button in the way of holding",
      build: bench()
        .wire("X1.1", "K1.30")
        .path("X1.2", "V1", "XJ1", "K1.86")
        .wire("K1.87", "E1.+")
        .path("K1.87", "S1", "XJ1"),
    },
  ],
  found: [
    {
      name: "trigger and output in one joint",
      build: bench()
        .wire("X1.1", "K1.30")
        .path("X1.2", "V1", "XJ1", "K1.86")
        .path("K1.87", "XJ1")
        .wire("XJ1", "E1.+"),
      findings: [{ at: ["K1.86", "K1.87"], says: "feeds its own coil", fix: null }],
    },
    {
      name: "back to the coil through a diode and a fuse",
      build: bench()
        .wire("X1.1", "K1.30")
        .path("X1.2", "V1", "K1.86")
        .wire("K1.87", "E1.+")
        .part("diode", "V2")
        .path("K1.87", "F1", "V2", "K1.86"),
      findings: [{ at: ["K1.86", "K1.87"], fix: null }],
    },
    {
      name: "the radio's relay feeds what wakes the radio",
      build: radio("K1.87"),
      findings: [{ at: ["A1.R", "A1.S", "K1"], says: "keeps it awake", fix: null }],
    },
    {
      name: "two relays hold one another",
      build: bench()
        .part("relay", "K2", { poles: "make", suppression: "resistor" })
        .wire("X1.1", "K1.30")
        .wire("X1.1", "K2.30")
        .path("X1.2", "V1", "K1.86")
        .wire("K1.87", "K2.86")
        .wire("K2.85", "X1.3")
        .path("K2.87", "XJ1", "K1.86")
        .wire("XJ1", "E1.+"),
      findings: [{ at: ["K1.86", "K1.87"], says: "K1 and K2 hold one another", fix: null }],
    },
  ],
});
