import rule from "../../../src/rules/rules/feeds/switched-input-on-another-lead.ts";
import { build } from "../../build.ts";
import { joined } from "../harnesses.ts";
import { testRule } from "../test-rule.ts";

const bus = () =>
  build()
    .vehicle("X1", {
      "1": "constant-feed RD fuse:15",
      "2": "illumination GY",
      "3": "can-high",
      "4": "can-low",
      "5": "antenna-power BU gives",
    })
    .module("A1", { rows: { "1": "constant-feed", "2": "switched-feed" } })
    .path("X1.1", "A1.1");

testRule(rule, {
  silent: [
    { name: "a vehicle that has a switched feed", build: joined() },
    {
      name: "an interface module reads the bus and gives accessory",
      build: bus()
        .module("A2", { role: "interface", rows: { "1": "switched-feed gives", "2": "can-high" } })
        .path("A2.1", "A1.2"),
    },
    { name: "not joined yet: another rule's", build: bus() },
    { name: "a switch in a constant lead", build: bus().path("X1.1", "S1", "A1.2") },
    {
      name: "illumination on its own input",
      build: bus()
        .module("A2", { rows: { "1": "illumination" } })
        .path("X1.2", "A2.1"),
    },
  ],
  found: [
    {
      name: "on the lights",
      build: bus().path("X1.2", "A1.2"),
      findings: [{ at: ["A1.2", "X1.2"], says: "the vehicle's charts show no switched feed", fix: null }],
    },
    {
      name: "on an antenna supply, through a joint and a fuse",
      build: bus().path("X1.5", "XJ1", "F1", "A1.2"),
      findings: [{ at: ["A1.2", "X1.5"], fix: null }],
    },
    {
      name: "on a data line",
      build: bus().path("X1.3", "XJ1", "A1.2"),
      findings: [{ at: ["A1.2", "X1.3"], fix: null }],
    },
  ],
});
