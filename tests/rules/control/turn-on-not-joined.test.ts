import rule from "../../../src/rules/rules/control/turn-on-not-joined.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const amplifier = (
  known: { wakes?: "by-signal" | "by-lead"; side?: "vehicle" } = {},
  line = "amplifier-turn-on takes",
) =>
  build().module("A2", {
    role: "amplifier",
    rows: { "+": "constant-feed", GND: "ground", REM: line },
    ...known,
  });
const second = () =>
  amplifier().module("A3", {
    role: "amplifier",
    rows: { "+": "constant-feed", REM: "amplifier-turn-on takes" },
  });

testRule(rule, {
  silent: [
    { name: "set to wake by its signal", build: amplifier({ wakes: "by-signal" }) },
    { name: "the chart calls it needed: a rule of its own tells", build: amplifier({ wakes: "by-lead" }) },
    { name: "optional on its chart", build: amplifier({}, "amplifier-turn-on takes optional") },
    { name: "the vehicle's own amplifier", build: amplifier({ side: "vehicle" }) },
    {
      name: "an output waits for it: that pair is told",
      build: amplifier().module("A1", { role: "receiver", rows: { REM: "amplifier-turn-on gives" } }),
    },
    {
      name: "fed from a relay",
      build: amplifier()
        .vehicle("X1", { "1": "constant-feed fuse:5", "2": "switched-feed fuse:5" })
        .part("relay", "K1", { poles: "make" })
        .path("X1.2", "K1.86")
        .path("K1.85", "XE1")
        .path("X1.1", "K1.30")
        .path("K1.87", "A2.REM"),
    },
    {
      name: "on the contact of a relay of which not all is drawn",
      build: amplifier().part("relay", "K1").path("K1.87", "A2.REM"),
    },
    { name: "its wire ends loose, which is told", build: amplifier().wire("A2.REM", "loose") },
    {
      name: "one whose feed comes with the key",
      build: build().module("A2", { rows: { "+": "switched-feed", REM: "amplifier-turn-on takes" } }),
    },
  ],
  found: [
    {
      name: "alone in its circuit",
      build: amplifier(),
      findings: [{ at: ["A2.REM"], severity: "weak", says: "joined to nothing", fix: null }],
    },
    {
      name: "two amplifiers that wait for each other",
      build: second().path("A2.REM", "XJ1", "A3.REM"),
      findings: [
        { at: ["A2.REM"], severity: "weak", says: "A3.REM", fix: null },
        { at: ["A3.REM"], severity: "weak", fix: null },
      ],
    },
    {
      name: "woken by lead, and joined to another input only",
      build: amplifier({ wakes: "by-lead" })
        .module("A3", { rows: { REM: "amplifier-turn-on takes optional" } })
        .wire("A2.REM", "A3.REM"),
      findings: [{ at: ["A2.REM"], severity: "fault", fix: null }],
    },
    {
      name: "capped",
      build: amplifier().path("A2.REM", "XC1"),
      findings: [{ at: ["A2.REM"], severity: "weak", fix: null }],
    },
  ],
});
