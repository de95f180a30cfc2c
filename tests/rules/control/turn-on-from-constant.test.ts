import rule from "../../../src/rules/rules/control/turn-on-from-constant.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const amplifier = () =>
  build()
    .vehicle("X1", {
      "1": "constant-feed RD fuse:5",
      "2": "switched-feed YE fuse:5",
      "3": "antenna-power BU",
    })
    .module("A1", { role: "receiver", rows: { REM: "amplifier-turn-on gives 0.3A" } })
    .module("A2", { role: "amplifier", rows: { "+": "constant-feed", REM: "amplifier-turn-on takes" } });

testRule(rule, {
  silent: [
    { name: "from the receiver", build: amplifier().wire("A1.REM", "A2.REM") },
    { name: "from a switched feed", build: amplifier().wire("X1.2", "A2.REM") },
    {
      name: "from the constant feed through a hand's switch",
      build: amplifier().part("switch", "S1", { operatedBy: "hand" }).path("X1.1", "S1", "A2.REM"),
    },
    {
      name: "from the constant feed through a relay that the key pulls",
      build: amplifier()
        .part("relay", "K1", { poles: "make" })
        .path("X1.2", "K1.86")
        .path("K1.85", "XE1")
        .path("X1.1", "K1.30")
        .path("K1.87", "A2.REM"),
    },
    { name: "its feed is constant, as it has to be", build: amplifier().wire("X1.1", "A2.+") },
    { name: "joined to nothing", build: amplifier() },
  ],
  found: [
    {
      name: "straight",
      build: amplifier().wire("X1.1", "A2.REM"),
      findings: [{ at: ["A2.REM"], says: "X1.1 constant feed (red), at all times", fix: null }],
    },
    {
      name: "bridged to its own feed at the amplifier",
      build: amplifier().path("X1.1", "F1", "A2.+", "A2.REM"),
      findings: [{ at: ["A2.REM"], says: "through F1", fix: null }],
    },
    {
      name: "from the battery, through the rest contact of a relay",
      build: amplifier()
        .part("supply", "G1")
        .part("relay", "K1", { poles: "changeover" })
        .path("G1.+", "F1", "K1.30")
        .path("K1.87a", "A2.REM"),
      findings: [{ at: ["A2.REM"], fix: null }],
    },
    {
      name: "the antenna's amplifier",
      build: amplifier().wire("X1.1", "X1.3"),
      findings: [{ at: ["X1.3"], fix: null }],
    },
  ],
});
