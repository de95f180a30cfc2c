import type { Module } from "../../../src/graph/harness.ts";
import rule from "../../../src/rules/rules/grounds/return-through-shield.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const sound = (known: Partial<Module> = {}, amps = "20A") =>
  build()
    .vehicle("X1", { "1": "constant-feed fuse:40", "2": "ground", "3": "ground" })
    .module("A1", {
      rows: {
        "+": "constant-feed",
        GND: "ground",
        L: "line-front-left-signal gives",
        S: "line-front-left-shield gives",
      },
      ...known,
    })
    .module("A2", {
      rows: {
        "+": `constant-feed ${amps}`,
        GND: "ground",
        L: "line-front-left-signal takes",
        S: "line-front-left-shield takes",
      },
      ...known,
    })
    .wire("X1.1", "A1.+")
    .wire("X1.1", "A2.+")
    .wire("A1.GND", "X1.2")
    .wire("A1.L", "A2.L")
    .wire("A1.S", "A2.S")
    .cable("WC1", "shielded", ["W4"], "W5");
const camera = () =>
  build()
    .vehicle("X1", { "1": "reverse fuse:5" })
    .part("load", "E1", { type: "camera", current_A: 0.15 })
    .unit("X4", { "1": "switched-feed", "2": "ground", "6": "video-shield takes" })
    .wire("X1.1", "E1.+")
    .path("X4.2", "XE1");

testRule(rule, {
  silent: [
    { name: "a ground of its own", build: sound().wire("A2.GND", "X1.3") },
    {
      name: "its signal ground is apart: it is dead, which is told",
      build: sound({ signalGround: "isolated" }),
    },
    {
      name: "nothing is joined to it but its feed",
      build: build()
        .vehicle("X1", { "1": "constant-feed" })
        .unit("X2", { "1": "constant-feed", "2": "ground" })
        .wire("X1.1", "X2.1"),
    },
    { name: "grounded through a fuse", build: sound().path("A2.GND", "F1", "X1.3") },
    {
      name: "joined signal grounds, two ground leads",
      build: sound({ signalGround: "joined" }).wire("A2.GND", "X1.3").wire("A2.GND", "X1.2"),
    },
    {
      name: "joined signal grounds, a small unit",
      build: sound({ signalGround: "joined" }, "1A").wire("A2.GND", "X1.3"),
    },
    {
      name: "nobody has said that signal grounds are joined",
      build: sound({}, "40A").wire("A2.GND", "X1.3"),
    },
    { name: "a camera with its own ground, its shield joined too", build: camera().path("E1.−", "XE2") },
    {
      name: "the shield of a multicore stands for a plain lead",
      build: camera().wire("E1.−", "X4.2").cable("WC1", "multicore", ["W1"], "W3"),
    },
  ],
  found: [
    {
      name: "the ground forgotten",
      build: sound(),
      findings: [{ at: ["A1.S", "A2.GND"], says: "through A1.S, by the shield W5, for 20 A", fix: null }],
    },
    {
      name: "the ground taken to the receiver's audio ground",
      build: build()
        .vehicle("X1", { "1": "constant-feed fuse:40", "2": "ground" })
        .module("A1", { rows: { "+": "constant-feed", GND: "ground", AG: "audio-ground gives" } })
        .module("A2", { rows: { "+": "constant-feed", GND: "ground" } })
        .wire("X1.1", "A1.+")
        .wire("X1.1", "A2.+")
        .wire("A1.GND", "X1.2")
        .wire("A2.GND", "A1.AG"),
      findings: [{ at: ["A1.AG", "A2.GND"], fix: null }],
    },
    {
      name: "a camera that returns by the shield of its coax",
      build: camera().wire("E1.−", "X4.6").cable("WC1", "coax", ["W1"], "W3"),
      findings: [{ at: ["E1.−", "X4.6"], severity: "weak", fix: null }],
    },
    {
      name: "the ground lead of a unit is the shield of a cable",
      build: build()
        .vehicle("X1", { "1": "constant-feed fuse:40", "2": "ground" })
        .unit("X2", { "1": "constant-feed", "2": "ground" })
        .wire("X1.1", "X2.1")
        .wire("X1.2", "X2.2")
        .cable("WC1", "shielded", ["W1"], "W2"),
      findings: [{ at: ["X2.2"], says: "the shield W2", fix: null }],
    },
    {
      name: "what if the one ground came off",
      build: sound({ signalGround: "joined" }, "40A").wire("A2.GND", "X1.3"),
      findings: [{ at: ["A2.S", "W6"], severity: "tidy", says: "Should it come off, 40 A", fix: null }],
    },
  ],
});
