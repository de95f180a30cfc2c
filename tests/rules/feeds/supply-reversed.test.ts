import rule from "../../../src/rules/rules/feeds/supply-reversed.ts";
import { build } from "../../build.ts";
import { feeds, joined } from "../harnesses.ts";
import { testRule } from "../test-rule.ts";

const camera = (polarised: boolean) =>
  build()
    .vehicle("X1", { "1": "reverse GN", "2": "ground BN" })
    .part("load", "E1", { type: polarised ? "camera" : "lamp", function: "reverse", polarised })
    .wire("X1.1", "E1.−")
    .wire("X1.2", "E1.+");

testRule(rule, {
  silent: [
    { name: "the right way round", build: joined() },
    { name: "a feed on ground, its ground not fed", build: feeds().wire("X1.A8", "X2.1") },
    { name: "a filament lamp does not care", build: camera(false) },
  ],
  found: [
    {
      name: "constant and ground exchanged",
      build: feeds().path("X1.A4", "XJ1", "X2.3").path("X1.A8", "XJ2", "X2.1"),
      findings: [
        {
          at: ["X2.1", "X2.3"],
          says: "X2.1 constant feed (yellow) lies on ground",
          fix: "Exchange the two leads at XJ2 and XJ1",
        },
      ],
    },
    {
      name: "at the battery, through a fuse",
      build: build()
        .part("supply", "G1")
        .module("A1", { rows: { "1": "constant-feed", "2": "ground" } })
        .path("G1.+", "F1", "A1.2")
        .wire("G1.−", "A1.1"),
      findings: [{ at: ["A1.1", "A1.2"], fix: "Exchange the two leads at A1.1 and A1.2" }],
    },
    {
      name: "a camera that minds",
      build: camera(true),
      findings: [{ at: ["E1.+", "E1.−"], fix: "Exchange the two leads at E1.+ and E1.−" }],
    },
    {
      name: "a camera box",
      build: build()
        .vehicle("X1", { "1": "reverse fuse:10", "2": "ground" })
        .module("A1", { role: "camera", rows: { "1": "camera-power takes", "2": "ground" } })
        .wire("X1.1", "A1.2")
        .wire("X1.2", "A1.1"),
      findings: [{ at: ["A1.1", "A1.2"], fix: "Exchange the two leads at A1.1 and A1.2" }],
    },
  ],
});
