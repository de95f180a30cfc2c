import rule from "../../../src/rules/rules/relays/suppressed-coil-reversed.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const bench = (suppression: "none" | "diode" | "resistor" | "unknown") =>
  build()
    .vehicle("X1", { "1": "switched-feed fuse:5", "3": "ground" })
    .unit("X2", { "6": "relay-coil-return gives" })
    .part("relay", "K1", { poles: "make", suppression })
    .part("diode", "V1");

testRule(rule, {
  silent: [
    { name: "plus on 86", build: bench("diode").wire("X1.1", "K1.86").wire("K1.85", "X1.3") },
    {
      name: "a resistor does not mind",
      build: bench("resistor").wire("X1.1", "K1.85").wire("K1.86", "X1.3"),
    },
    { name: "nobody has said", build: bench("unknown").wire("X1.1", "K1.85").wire("K1.86", "X1.3") },
    {
      name: "a diode outside, its stripe at plus",
      build: bench("none").wire("X1.1", "K1.86").wire("K1.85", "X1.3").path("K1.85", "V1", "K1.86"),
    },
    {
      name: "a diode in the lead of the coil",
      build: bench("none").path("X1.1", "V1", "K1.86").wire("K1.85", "X1.3"),
    },
    { name: "one end open", build: bench("diode").wire("X1.1", "K1.85") },
  ],
  found: [
    {
      name: "plus on 85",
      build: bench("diode").wire("X1.1", "K1.85").wire("K1.86", "X1.3"),
      findings: [{ at: ["K1.85", "K1.86"], says: "on 85", fix: "Exchange the leads at 85 and 86 of K1" }],
    },
    {
      name: "plus on 85, pulled to ground by a unit, through a fuse and a switch",
      build: bench("diode").path("X1.1", "F1", "S1", "K1.85").path("K1.86", "XJ1", "X2.6"),
      findings: [{ at: ["K1.85", "K1.86"], fix: "Exchange the leads at 85 and 86 of K1" }],
    },
    {
      name: "a diode outside, its stripe to ground",
      build: bench("none").wire("X1.1", "K1.86").wire("K1.85", "X1.3").path("K1.86", "V1", "K1.85"),
      findings: [{ at: ["K1", "V1"], says: "towards ground", fix: "Turn V1 round" }],
    },
  ],
});
