import rule from "../../../src/rules/rules/feeds/feed-of-wrong-kind.ts";
import { build } from "../../build.ts";
import { joined } from "../harnesses.ts";
import { testRule } from "../test-rule.ts";

const to = (gives: string, takes: string) =>
  build()
    .vehicle("X1", { "1": `${gives} RD fuse:10`, "2": "switched-feed YE fuse:10" })
    .unit("X2", { "1": takes })
    .path("X1.1", "XJ1", "X2.1");

testRule(rule, {
  silent: [
    { name: "each on its own kind", build: joined() },
    { name: "an accessory input on accessory", build: to("switched-feed", "switched-feed") },
    { name: "an ignition input on ignition", build: to("ignition-feed", "ignition-feed") },
    { name: "on constant: another rule's", build: to("constant-feed", "switched-feed") },
    {
      name: "through a relay that accessory drives",
      build: build()
        .vehicle("X1", { "1": "constant-feed fuse:10", "2": "switched-feed fuse:5" })
        .unit("X2", { "1": "switched-feed" })
        .part("relay", "K1", { poles: "make" })
        .path("X1.1", "K1.30")
        .path("K1.87", "X2.1")
        .path("X1.2", "K1.86")
        .path("K1.85", "XE1"),
    },
    {
      name: "a heater that falls out while the engine cranks",
      build: build()
        .vehicle("X1", { "1": "switched-feed fuse:10" })
        .part("load", "E1", { type: "heater", function: "ignition-feed" })
        .path("X1.1", "E1.+"),
    },
    {
      name: "a manual switch",
      build: build()
        .vehicle("X1", { "1": "constant-feed fuse:10" })
        .unit("X2", { "1": "switched-feed" })
        .path("X1.1", "S1", "X2.1"),
    },
    {
      name: "a turn-on from the receiver",
      build: build()
        .vehicle("X1", { "2": "switched-feed" })
        .module("A1", { role: "receiver", rows: { "1": "camera-power gives" } })
        .module("A2", { rows: { "1": "switched-feed" } })
        .path("A1.1", "A2.1"),
    },
  ],
  found: [
    {
      name: "an accessory input on ignition",
      build: to("ignition-feed", "switched-feed"),
      findings: [{ at: ["X2.1"], says: "it has nothing with the key at accessory", fix: null }],
    },
    {
      name: "an ignition input on accessory",
      build: to("switched-feed", "ignition-feed"),
      findings: [{ at: ["X2.1"], says: "it has nothing while the engine cranks", fix: null }],
    },
    {
      name: "with the lights only, where there is an accessory feed",
      build: to("illumination", "switched-feed"),
      findings: [{ at: ["X2.1"], says: "it is live only with the lights on", fix: null }],
    },
    {
      name: "a constant input behind a contact that the starter opens",
      build: build()
        .vehicle("X1", { "1": "constant-feed fuse:10", "2": "starter-signal" })
        .module("A1", { rows: { "1": "constant-feed" } })
        .part("relay", "K1", { poles: "changeover" })
        .path("X1.1", "K1.30")
        .path("K1.87a", "A1.1")
        .path("X1.2", "K1.86")
        .path("K1.85", "XE1"),
      findings: [{ at: ["A1.1"], says: "while the engine cranks", fix: null }],
    },
    {
      name: "a camera on a relay that ignition drives",
      build: build()
        .vehicle("X1", { "1": "constant-feed fuse:10", "2": "ignition-feed fuse:5" })
        .part("load", "E1", { type: "camera", function: "switched-feed" })
        .part("relay", "K1", { poles: "make" })
        .path("X1.1", "K1.30")
        .path("K1.87", "F1", "E1.+")
        .path("X1.2", "K1.86")
        .path("K1.85", "XE1"),
      findings: [{ at: ["E1.+"], fix: null }],
    },
  ],
});
