import type { Module } from "../../../src/graph/harness.ts";
import rule from "../../../src/rules/rules/grounds/ground-loop.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

type Tied = Module["signalGround"];
const sound = (receiver: Tied, amplifier: Tied, amps = "20A", name = "line-front-left-shield") =>
  build()
    .vehicle("X1", { "1": "constant-feed fuse:40" })
    .module("A1", {
      signalGround: receiver,
      rows: { "+": "constant-feed 2A", GND: "ground", S: `${name} gives` },
    })
    .module("A2", {
      signalGround: amplifier,
      rows: { "+": `constant-feed ${amps}`, GND: "ground", S: `${name} takes` },
    })
    .wire("X1.1", "A1.+", "RD", { area_mm2: 1.5, length_m: 1 })
    .wire("X1.1", "A2.+", "RD", { area_mm2: 6, length_m: 1 })
    .part("ground", "XE1", { surface: "bare-metal" })
    .part("ground", "XE2", { surface: "bare-metal" })
    .wire("A1.GND", "XE1", "BK", { area_mm2: 1.5, length_m: 0.5 });
const apart = (receiver: Tied, amplifier: Tied, amps?: string, name?: string) =>
  sound(receiver, amplifier, amps, name).wire("A2.GND", "XE2", "BK", { area_mm2: 6, length_m: 0.5 });

testRule(rule, {
  silent: [
    {
      name: "one stud",
      build: sound("joined", "joined")
        .wire("A2.GND", "XE1", "BK", { area_mm2: 6, length_m: 0.5 })
        .wire("A1.S", "A2.S"),
    },
    { name: "an input that is kept apart", build: apart("joined", "isolated").wire("A1.S", "A2.S") },
    { name: "nobody has said", build: apart("joined", "unknown").wire("A1.S", "A2.S") },
    { name: "no lead between them", build: apart("joined", "joined") },
    {
      name: "so little drawn that nothing is lost",
      build: apart("joined", "joined", "0.1A")
        .change("A1", { signalGround: "joined" })
        .change("W3", { area_mm2: 16 })
        .wire("A1.S", "A2.S"),
    },
  ],
  found: [
    {
      name: "two studs",
      build: apart("joined", "joined").wire("A1.S", "A2.S"),
      findings: [{ at: ["A1.S", "A2.S"], says: "A1 stands on XE1, A2 on XE2", fix: null }],
    },
    {
      name: "a picture's lead, through a joint",
      build: apart("joined", "joined", "20A", "video-shield").path("A1.S", "XJ1", "A2.S"),
      findings: [{ at: ["A1.S", "A2.S"], fix: null }],
    },
    {
      name: "by the contacts of connectors, 24 V",
      build: apart("joined", "joined")
        .settings({ systemVoltage_V: 24 })
        .receptacle("X3", "A1", { "2": "line-rear-left-shield gives" })
        .receptacle("X4", "A2", { "2": "line-rear-left-shield takes" })
        .wire("X3.2", "X4.2"),
      findings: [{ at: ["X3.2", "X4.2"], fix: null }],
    },
  ],
});
