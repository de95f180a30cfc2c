import rule from "../../../src/rules/rules/grounds/unit-without-ground.ts";
import { build } from "../../build.ts";
import { feeds, joined } from "../harnesses.ts";
import { testRule } from "../test-rule.ts";

const lamp = () =>
  build()
    .vehicle("X1", { "1": "reverse GN" })
    .part("load", "E1", { type: "lamp", function: "reverse" })
    .wire("X1.1", "E1.+");

testRule(rule, {
  silent: [
    {
      name: "grounded through couplers that are mated, the feeds exchanged",
      build: build()
        .vehicle("X1", { A4: "constant-feed", A7: "switched-feed", A8: "ground" })
        .unit("X2", { A4: "switched-feed", A7: "constant-feed", A8: "ground" })
        .mate("X1", "X2"),
    },
    {
      name: "feed and ground exchanged: the danger speaks",
      build: feeds().path("X1.A4", "X2.3").path("X1.A8", "X2.1"),
    },
    {
      name: "a lamp that the vehicle's parking-brake switch grounds",
      build: build()
        .vehicle("X1", { "1": "ignition-feed", "2": "parking-brake gives" })
        .part("load", "E1", { type: "lamp" })
        .wire("X1.1", "E1.+")
        .wire("E1.−", "X1.2"),
    },
    { name: "grounded by the vehicle's lead", build: joined() },
    { name: "grounded at a stud", build: feeds().path("X2.3", "XE1") },
    {
      name: "grounded at the battery, through a fuse",
      build: feeds().part("supply", "G1").path("X2.3", "F1", "G1.−"),
    },
    { name: "a unit that draws nothing", build: build().unit("X2", { "1": "speaker-front-left-plus" }) },
    { name: "a lamp with its return", build: lamp().path("E1.−", "XE1") },
    { name: "a lamp that is not wired yet", build: build().part("load", "E1") },
    { name: "the vehicle itself", build: build().vehicle("X1", { A4: "constant-feed takes" }) },
  ],
  found: [
    {
      name: "only what it measures against is grounded",
      build: build()
        .vehicle("X1", { "1": "constant-feed", "2": "ground" })
        .unit("X2", { "1": "constant-feed", "2": "ground", "3": "sense-ground" })
        .wire("X1.1", "X2.1")
        .wire("X1.2", "X2.3"),
      findings: [{ at: ["X2.2"], fix: null }],
    },
    {
      name: "a ground cavity left open beside the vehicle's",
      build: feeds(),
      findings: [{ at: ["X2.3"], says: "X2.3 ground (black) reaches no ground", fix: "Join X2.3 to X1.A8" }],
    },
    {
      name: "a ground that ends in a cap",
      build: feeds().path("X2.3", "XC1"),
      findings: [{ at: ["X2.3"], fix: null }],
    },
    {
      name: "a ground joined only to another unit's ground",
      build: build()
        .module("A1", { rows: { "1": "constant-feed", "2": "ground" } })
        .module("A2", { rows: { "1": "constant-feed", "2": "ground" } })
        .wire("A1.2", "A2.2"),
      findings: [
        { at: ["A1.2"], fix: null },
        { at: ["A2.2"], fix: null },
      ],
    },
    {
      name: "a chart without a ground",
      build: build().unit("X2", { "1": "constant-feed" }),
      findings: [{ at: ["X2"], says: "no ground lead on its chart", fix: null }],
    },
    {
      name: "a camera's supply draws current too",
      build: build()
        .vehicle("X1", { "1": "reverse fuse:10" })
        .module("A1", { role: "camera", rows: { "1": "camera-power takes", "2": "ground" } })
        .wire("X1.1", "A1.1"),
      findings: [{ at: ["A1.2"], fix: null }],
    },
    { name: "a lamp without its return", build: lamp(), findings: [{ at: ["E1.−"], fix: null }] },
    {
      name: "a lamp without its return, with one stud to take it to",
      build: lamp().part("ground", "XE1"),
      findings: [{ at: ["E1.−"], fix: "Join E1.− to XE1" }],
    },
  ],
});
