import rule from "../../../src/rules/rules/protection/fuses-in-parallel.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const lamp = () => build().part("supply", "G1").part("load", "E1").path("E1.−", "XE1", "G1.−");

testRule(rule, {
  silent: [
    { name: "two in series", build: lamp().path("G1.+", "F1", "F2", "E1.+") },
    {
      name: "two that leave one joint for different loads",
      build: lamp().part("load", "E2").path("G1.+", "XJ1", "F1", "E1.+").path("XJ1", "F2", "E2.+"),
    },
    { name: "two that nobody has wired yet", build: lamp().part("fuse", "F1").part("fuse", "F2") },
    {
      name: "two contacts of the vehicle behind one and the same rating",
      build: build()
        .vehicle("X1", { "1": "constant-feed fuse:15", "2": "constant-feed fuse:15" })
        .part("load", "E1")
        .path("X1.1", "XJ1", "E1.+")
        .path("X1.2", "XJ1"),
    },
    {
      name: "two feeds, each through a diode",
      build: lamp()
        .part("diode", "D1")
        .part("diode", "D2")
        .path("G1.+", "F1", "D1", "E1.+")
        .path("G1.+", "F2", "D2", "E1.+"),
    },
  ],
  found: [
    {
      name: "from joint to joint",
      build: lamp().path("G1.+", "XJ1", "F1", "XJ2", "E1.+").path("XJ1", "F2", "XJ2"),
      findings: [{ at: ["F1", "F2"], says: "F1 and F2 stand side by side", fix: null }],
    },
    {
      name: "from post to load, one of them turned round",
      build: lamp().part("fuse", "F2").path("G1.+", "F1", "E1.+").wire("G1.+", "F2.2").wire("F2.1", "E1.+"),
      findings: [{ at: ["F1", "F2"], fix: null }],
    },
    {
      name: "through a mated plug, three of them",
      build: lamp()
        .unit("X1", { "1": "unknown none" })
        .unit("X2", { "1": "unknown none" })
        .mate("X1", "X2")
        .path("G1.+", "F1", "X1.1")
        .path("G1.+", "F2", "X2.1")
        .path("G1.+", "F3", "X2.1")
        .path("X2.1", "E1.+"),
      findings: [{ at: ["F1", "F2", "F3"], fix: null }],
    },
    {
      name: "two fused leads of the vehicle tied together",
      build: build()
        .vehicle("X1", { "1": "constant-feed fuse:15", "2": "constant-feed fuse:20" })
        .part("load", "E1")
        .path("X1.1", "XJ1", "E1.+")
        .path("X1.2", "XJ1"),
      findings: [{ at: ["X1.1", "X1.2"], says: "X1.1 (15 A) and X1.2 (20 A) are tied together", fix: null }],
    },
  ],
});
