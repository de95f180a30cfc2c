import rule from "../../../src/rules/rules/feeds/negative-isolator-bypassed.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const car = () =>
  build()
    .part("supply", "G1")
    .part("switch", "S1", { operatedBy: "isolator" })
    .path("XE1", "S1", "G1.−")
    .module("A1", {
      role: "receiver",
      rows: { "1": "constant-feed", "2": "ground", "3": "ground", "4": "line-front-left-shield gives" },
    })
    .path("G1.+", "F1", "A1.1");
const amplifier = (signalGround: "joined" | "isolated") =>
  car()
    .path("A1.2", "G1.−")
    .module("A2", {
      role: "amplifier",
      signalGround,
      rows: { "1": "ground", "2": "line-front-left-shield takes" },
    })
    .path("A2.1", "XE3")
    .path("A1.4", "A2.2");

testRule(rule, {
  silent: [
    {
      name: "all grounds at the frame, the memory before the switch",
      build: car().path("A1.2", "XE2").path("A1.3", "XE3"),
    },
    { name: "all grounds at the battery's post", build: car().path("A1.2", "G1.−").path("A1.3", "G1.−") },
    {
      name: "the switch in the positive lead",
      build: build()
        .part("supply", "G1")
        .part("switch", "S1", { operatedBy: "isolator" })
        .module("A1", { rows: { "1": "constant-feed", "2": "ground", "3": "ground" } })
        .path("G1.+", "S1", "F1", "A1.1")
        .path("A1.2", "G1.−", "XE1")
        .path("A1.3", "XE2"),
    },
    { name: "an amplifier that keeps its signal ground apart", build: amplifier("isolated") },
  ],
  found: [
    {
      name: "one ground at the post, one at another stud of the frame",
      build: car().path("A1.2", "G1.−").path("A1.3", "XE2"),
      findings: [
        {
          at: ["S1", "A1.2", "A1.3"],
          says: "lies in the negative lead, and A1.2 ground and A1.3 ground lead round it",
          fix: null,
        },
      ],
    },
    {
      name: "through the shield of a line to an amplifier",
      build: amplifier("joined"),
      findings: [{ at: ["S1", "A1.2", "A1.4", "A2.2", "A2.1"], fix: null }],
    },
    {
      name: "by its receptacle, one ground by way of a fuse",
      build: build()
        .part("supply", "G1")
        .part("switch", "S1", { operatedBy: "isolator" })
        .path("XE1", "S1", "G1.−")
        .module("A1")
        .receptacle("X1", "A1", { "1": "ground", "2": "ground" })
        .path("X1.1", "F1", "G1.−")
        .path("X1.2", "XE1"),
      findings: [{ at: ["S1", "X1.1", "X1.2"], fix: null }],
    },
    {
      name: "a strap straight from the post to the frame",
      build: car().path("A1.2", "XE2").path("G1.−", "XE3"),
      findings: [{ at: ["S1"], says: "leads join both its sides", fix: null }],
    },
  ],
});
