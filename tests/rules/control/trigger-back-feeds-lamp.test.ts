import rule from "../../../src/rules/rules/control/trigger-back-feeds-lamp.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const camera = () =>
  build()
    .vehicle("X1", { "1": "reverse GN/WH fuse:10", "2": "switched-feed RD fuse:5" })
    .unit("X2", { "3": "camera-trigger GN", "4": "camera-power gives" });
const button = () => camera().part("switch", "S1", { operatedBy: "hand" });
const diode = () => button().part("diode", "V1");

testRule(rule, {
  silent: [
    { name: "the trigger on the lamp's lead", build: camera().wire("X1.1", "X2.3") },
    {
      name: "a button, with a diode from the lamp's lead",
      build: diode().wire("X1.1", "V1.A").wire("V1.K", "X2.3").path("X1.2", "S1", "X2.3"),
    },
    {
      name: "a button that pulls a relay",
      build: button()
        .part("relay", "K1", { poles: "changeover" })
        .path("X1.2", "S1", "K1.86")
        .path("K1.85", "XE1")
        .wire("X1.2", "K1.87")
        .wire("X1.1", "K1.87a")
        .wire("K1.30", "X2.3"),
    },
    {
      name: "a module that says in reverse what the lamp says",
      build: camera()
        .module("A1", { role: "interface", rows: { R: "reverse gives" } })
        .path("A1.R", "X2.3")
        .wire("X1.1", "X2.3"),
    },
    {
      name: "the reversing switch of the gearbox",
      build: camera().part("switch", "S2", { operatedBy: "reverse-gear" }).path("X1.2", "S2", "X1.1"),
    },
    { name: "a button on a trigger of its own", build: button().path("X1.2", "S1", "X2.3") },
  ],
  found: [
    {
      name: "a button in copper with the lamp's lead",
      build: button().wire("X1.1", "X2.3").path("X1.2", "S1", "X2.3"),
      findings: [{ at: ["X1.1", "X1.2"], says: "also feeds X1.1 reverse", fix: null }],
    },
    {
      name: "the unit's own camera output, in a joint with the lamp",
      build: camera()
        .part("load", "E1", { type: "lamp", function: "reverse" })
        .path("X1.1", "XJ1", "E1.+")
        .path("X2.4", "XJ1")
        .path("E1.−", "XE1"),
      findings: [{ at: ["X1.1", "X2.4"], fix: null }],
    },
    {
      name: "the diode the wrong way round",
      build: diode().wire("X1.1", "V1.K").wire("V1.A", "X2.3").path("X1.2", "S1", "X2.3"),
      findings: [{ at: ["X1.1", "X1.2"], fix: null }],
    },
    {
      name: "through mated couplers",
      build: button()
        .unit("X3", { "1": "reverse takes", "2": "switched-feed takes" })
        .mate("X1", "X3")
        .path("X3.2", "S1", "XJ1", "X2.3")
        .wire("X3.1", "XJ1"),
      findings: [{ at: ["X1.1", "X1.2"], fix: null }],
    },
  ],
});
