import rule from "../../../src/rules/rules/relays/coil-without-suppression.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

type Suppression = "none" | "diode" | "resistor" | "unknown";
const bench = (suppression: Suppression) =>
  build()
    .vehicle("X1", { "1": "constant-feed fuse:15", "2": "relay-control gives 0.2A", "3": "ground" })
    .unit("X2", { "5": "amplifier-turn-on", "6": "relay-coil-return gives" })
    .part("relay", "K1", { poles: "make", suppression })
    .part("switch", "S1");
const high = (suppression: Suppression) => bench(suppression).wire("X2.5", "K1.86").wire("K1.85", "X1.3");

testRule(rule, {
  silent: [
    { name: "nobody has said what is inside", build: high("unknown") },
    { name: "a resistor inside", build: high("resistor") },
    { name: "a switch drives it", build: bench("none").path("X1.1", "S1", "K1.86").wire("K1.85", "X1.3") },
    { name: "a diode across it", build: high("none").part("diode", "V1").path("K1.85", "V1", "K1.86") },
    {
      name: "a diode from another ground",
      build: high("none").part("diode", "V1").path("XE1", "V1", "K1.86"),
    },
    {
      name: "a resistor across it, a fuse on the way",
      build: bench("none")
        .path("X2.5", "F1", "K1.86")
        .wire("K1.85", "X1.3")
        .part("resistor", "R1", { resistance_ohm: 680 })
        .path("K1.86", "R1", "X1.3"),
    },
    { name: "not wired", build: bench("none") },
  ],
  found: [
    {
      name: "a turn-on output",
      build: high("none"),
      findings: [{ at: ["K1.85", "K1.86", "X2.5"], severity: "fault", says: "X2.5", fix: null }],
    },
    {
      name: "an output that pulls to ground",
      build: bench("none").path("X1.1", "F1", "K1.86").path("K1.85", "XJ1", "X2.6"),
      findings: [{ at: ["K1.85", "K1.86", "X2.6"], severity: "fault", fix: null }],
    },
    {
      name: "a controller of the vehicle",
      build: bench("none").wire("X1.2", "K1.86").wire("K1.85", "XE1"),
      findings: [{ at: ["K1.85", "K1.86", "X1.2"], fix: null }],
    },
    {
      name: "a diode that lies elsewhere",
      build: high("none").part("diode", "V1").path("X1.1", "V1", "XJ9"),
      findings: [{ at: ["K1.85", "K1.86", "X2.5"], severity: "fault", fix: null }],
    },
  ],
});
