import rule from "../../../src/rules/rules/relays/sources-feed-one-another.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const bench = () =>
  build()
    .vehicle("X1", {
      "1": "constant-feed fuse:10",
      "2": "interior-lamp gives fuse:5",
      "3": "ground",
      "4": "switched-feed fuse:10",
      "5": "ignition-feed fuse:10",
      "6": "stop-lamp fuse:10",
    })
    .part("switch", "S1")
    .part("load", "E1", { type: "lamp", function: "interior-lamp", current_A: 0.8 })
    .wire("E1.−", "X1.3");
const relay = () =>
  bench().part("relay", "K1", { poles: "changeover", suppression: "resistor" }).wire("K1.85", "X1.3");

testRule(rule, {
  silent: [
    {
      name: "a diode for each",
      build: bench()
        .part("diode", "V1")
        .part("diode", "V2")
        .path("X1.2", "V1", "XJ1", "E1.+")
        .path("X1.1", "S1", "V2", "XJ1"),
    },
    { name: "a switch before the lamp, not beside it", build: bench().path("X1.2", "S1", "E1.+") },
    {
      name: "a relay that changes over",
      build: relay()
        .path("X1.1", "S1", "K1.86")
        .wire("X1.1", "K1.87")
        .wire("X1.2", "K1.87a")
        .wire("K1.30", "E1.+"),
    },
    {
      name: "the pedal's own switch",
      build: bench().part("switch", "S2", { operatedBy: "brake-pedal" }).path("X1.1", "S2", "X1.6"),
    },
    { name: "two cavities of one feed", build: bench().wire("X1.4", "X1.4") },
  ],
  found: [
    {
      name: "a switch of one's own on the vehicle's lamp",
      build: bench().path("X1.2", "XJ1", "E1.+").path("X1.1", "S1", "XJ1"),
      findings: [{ at: ["X1.1", "X1.2"], says: "feeds back into X1.2", fix: null }],
    },
    {
      name: "accessory and ignition in one joint",
      build: bench().path("X1.4", "XJ1", "X1.5"),
      findings: [{ at: ["X1.4", "X1.5"], says: "crank", fix: null }],
    },
    {
      name: "through a relay's contact",
      build: relay()
        .path("X1.1", "S1", "K1.86")
        .wire("X1.1", "K1.30")
        .path("K1.87", "XJ1", "E1.+")
        .wire("X1.2", "XJ1"),
      findings: [{ at: ["X1.1", "X1.2"], fix: null }],
    },
    {
      name: "one of two diodes left out",
      build: bench().part("diode", "V2").path("X1.2", "XJ1", "E1.+").path("X1.1", "S1", "V2", "XJ1"),
      findings: [{ at: ["X1.1", "X1.2"], fix: null }],
    },
  ],
});
