import type { Supply } from "../../../src/graph/harness.ts";
import rule from "../../../src/rules/rules/grounds/ground-past-battery-sensor.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const battery = (sensor: Supply["sensor"] = "on-minus") =>
  build()
    .part("supply", "G1", { sensor })
    .path("G1.−", "XE1")
    .unit("X2", { "1": "constant-feed YE", "2": "ground BK" });

testRule(rule, {
  silent: [
    { name: "on the body", build: battery().wire("X2.2", "XE1") },
    { name: "on the post, without a sensor", build: battery("none").wire("X2.2", "G1.−") },
    { name: "on the post, and nobody has said", build: battery("unknown").wire("X2.2", "G1.−") },
    { name: "only the vehicle's strap", build: battery() },
    {
      name: "a second strap to the body, with a unit on its stud",
      build: battery().path("G1.−", "XE2").wire("X2.2", "XE2"),
    },
    {
      name: "the vehicle's own ground lead on the post",
      build: battery().vehicle("X1", { "1": "ground BN" }).wire("G1.−", "X1.1").wire("X1.1", "X2.2"),
    },
  ],
  found: [
    {
      name: "on the post",
      build: battery().wire("X2.2", "G1.−"),
      findings: [
        { at: ["G1", "W2"], says: "X2.2 ground (black) straight to the minus post of G1", fix: null },
      ],
    },
    {
      name: "a charger, through a fuse and a joint",
      build: battery()
        .module("A1", { role: "charger", rows: { "-": "ground" } })
        .path("A1.-", "XJ1", "F1", "G1.−"),
      findings: [{ at: ["G1", "W4"], says: "A1.-", fix: null }],
    },
    {
      name: "by the post drawn as a ground",
      build: battery().part("ground", "XE3", { serves: "battery-post" }).wire("X2.2", "XE3"),
      findings: [{ at: ["W2", "XE3"], fix: null }],
    },
    {
      name: "a lamp and a unit",
      build: battery().part("load", "E1", { type: "lamp" }).wire("E1.−", "G1.−").wire("X2.2", "G1.−"),
      findings: [{ at: ["G1", "W2", "W3"], says: "W2 and W3", fix: null }],
    },
  ],
});
