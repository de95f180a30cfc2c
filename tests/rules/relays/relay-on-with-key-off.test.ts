import rule from "../../../src/rules/rules/relays/relay-on-with-key-off.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const bench = () =>
  build()
    .vehicle("X1", { "1": "constant-feed fuse:20", "2": "switched-feed fuse:5", "3": "ground" })
    .unit("X2", { "5": "amplifier-turn-on" })
    .part("relay", "K1", { poles: "make", suppression: "resistor", coil_ohm: 84 })
    .wire("K1.85", "X1.3");

testRule(rule, {
  silent: [
    { name: "with the key", build: bench().wire("X1.2", "K1.86") },
    { name: "a switch that somebody closes", build: bench().path("X1.1", "S1", "K1.86") },
    { name: "a unit that is on", build: bench().wire("X2.5", "K1.86") },
    {
      name: "an isolator before it",
      build: bench().part("switch", "S1", { operatedBy: "isolator" }).path("X1.1", "S1", "K1.86"),
    },
    {
      name: "its ground comes with a switch",
      build: build()
        .vehicle("X1", { "1": "constant-feed fuse:20" })
        .part("relay", "K1", { poles: "make" })
        .wire("X1.1", "K1.86")
        .path("K1.85", "S1", "XE1"),
    },
  ],
  found: [
    {
      name: "on the constant feed",
      build: bench().wire("X1.1", "K1.86"),
      findings: [{ at: ["K1.85", "K1.86"], says: "150 mA", fix: null }],
    },
    {
      name: "from a battery of known size, through a fuse, plus on 85",
      build: build()
        .part("supply", "G1", { capacity_Ah: 95 })
        .part("relay", "K1", { poles: "make", suppression: "none" })
        .path("G1.+", "F1", "K1.85")
        .path("K1.86", "XE1")
        .wire("G1.−", "XE2"),
      findings: [{ at: ["K1.85", "K1.86"], fix: null }],
    },
    {
      name: "through another relay at rest",
      build: bench()
        .part("relay", "K2", { poles: "changeover" })
        .wire("X1.1", "K2.30")
        .wire("X1.2", "K2.86")
        .wire("K2.85", "X1.3")
        .wire("K2.87a", "K1.86"),
      findings: [{ at: ["K1.85", "K1.86"], fix: null }],
    },
  ],
});
