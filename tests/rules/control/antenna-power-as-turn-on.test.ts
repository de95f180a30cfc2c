import rule from "../../../src/rules/rules/control/antenna-power-as-turn-on.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const sound = () =>
  build()
    .unit("X2", { "5": "antenna-power BU 0.3A", "6": "amplifier-turn-on BU/WH 0.3A" })
    .vehicle("X1", { A5: "antenna-power BU" })
    .module("A2", { role: "amplifier", rows: { REM: "amplifier-turn-on takes" } });

testRule(rule, {
  silent: [
    { name: "each on its own", build: sound().wire("X2.6", "A2.REM").wire("X2.5", "X1.A5") },
    {
      name: "a source that has only the antenna's lead",
      build: build()
        .unit("X2", { "5": "antenna-power BU" })
        .module("A2", { rows: { REM: "amplifier-turn-on takes" } })
        .wire("X2.5", "A2.REM"),
    },
    {
      name: "an antenna on the amplifier's lead of a source that has no other",
      build: build()
        .unit("X2", { "6": "amplifier-turn-on BU/WH" })
        .vehicle("X1", { A5: "antenna-power BU" })
        .wire("X2.6", "X1.A5"),
    },
    {
      name: "both outputs through a diode each",
      build: sound()
        .part("diode", "V1")
        .part("diode", "V2")
        .wire("X2.5", "V1.A")
        .wire("X2.6", "V2.A")
        .path("V1.K", "XJ1", "A2.REM")
        .wire("V2.K", "XJ1"),
    },
    { name: "nothing is joined", build: sound() },
  ],
  found: [
    {
      name: "the amplifier on the antenna's lead",
      build: sound().wire("X2.5", "A2.REM"),
      findings: [{ at: ["A2.REM", "X2.5"], says: "the same unit gives X2.6 amplifier turn-on", fix: null }],
    },
    {
      name: "through a fuse, beside the antenna",
      build: sound().path("X2.5", "XJ1", "F1", "A2.REM").wire("XJ1", "X1.A5"),
      findings: [{ at: ["A2.REM", "X2.5"], fix: null }],
    },
    {
      name: "the antenna on the amplifier's lead",
      build: sound().wire("X2.6", "X1.A5"),
      findings: [{ at: ["X1.A5", "X2.6"], says: "X2.5 antenna power", fix: null }],
    },
    {
      name: "exchanged, the good output on another connector of the module",
      build: build()
        .module("A1", { role: "receiver", rows: { ANT: "antenna-power gives" } })
        .receptacle("X3", "A1", { "1": "amplifier-turn-on gives" })
        .vehicle("X1", { A5: "antenna-power takes" })
        .module("A2", { rows: { REM: "amplifier-turn-on takes" } })
        .wire("A1.ANT", "A2.REM")
        .wire("X3.1", "X1.A5"),
      findings: [
        { at: ["A1.ANT", "A2.REM"], fix: null },
        { at: ["X1.A5", "X3.1"], fix: null },
      ],
    },
  ],
});
