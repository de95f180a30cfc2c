import rule from "../../../src/rules/rules/relays/diode-blocks-its-circuit.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const bench = () =>
  build()
    .vehicle("X1", {
      "1": "reverse fuse:10",
      "2": "parking-brake gives",
      "3": "ground",
      "4": "ignition-feed fuse:5",
    })
    .unit("X2", { "3": "camera-trigger", "4": "parking-brake takes", "5": "amplifier-turn-on" })
    .part("relay", "K1", { poles: "make", suppression: "none" })
    .part("diode", "V1");

testRule(rule, {
  silent: [
    { name: "towards the trigger", build: bench().path("X1.1", "V1", "X2.3") },
    {
      name: "across a coil, its stripe at plus",
      build: bench().wire("X2.5", "K1.86").wire("K1.85", "X1.3").path("K1.85", "V1", "K1.86"),
    },
    { name: "an input that waits for ground", build: bench().path("X2.4", "V1", "X1.2") },
    {
      name: "it keeps one source from another",
      build: bench().path("X1.1", "V1", "XJ1", "X2.3").path("X1.4", "S1", "XJ1"),
    },
    { name: "one side open", build: bench().wire("X1.1", "V1.K").wire("V1.A", "loose") },
  ],
  found: [
    {
      name: "its stripe to the source",
      build: bench().wire("X1.1", "V1.K").wire("V1.A", "X2.3"),
      findings: [{ at: ["V1", "X2.3"], says: "the feed to X2.3", fix: "Turn V1 round" }],
    },
    {
      name: "before a coil, through a joint and a fuse",
      build: bench().path("X1.4", "F1", "V1.K").path("V1.A", "XJ1", "K1.86").wire("K1.85", "X1.3"),
      findings: [{ at: ["K1.86", "V1"], fix: "Turn V1 round" }],
    },
    {
      name: "its stripe to an input that waits for ground",
      build: bench().wire("X2.4", "V1.K").wire("V1.A", "X1.2"),
      findings: [{ at: ["V1", "X2.4"], says: "to ground from X2.4", fix: "Turn V1 round" }],
    },
    {
      name: "in a lamp's ground",
      build: bench()
        .part("load", "E1", { type: "lamp", function: "reverse" })
        .wire("X1.1", "E1.+")
        .wire("E1.−", "V1.K")
        .wire("V1.A", "X1.3"),
      findings: [{ at: ["E1.−", "V1"], fix: "Turn V1 round" }],
    },
  ],
});
