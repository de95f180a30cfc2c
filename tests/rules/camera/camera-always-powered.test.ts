import rule from "../../../src/rules/rules/camera/camera-always-powered.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const camera = (rows: Record<string, string> = {}, sleeps: "yes" | "no" | "unknown" = "unknown") =>
  build()
    .vehicle("X1", {
      "1": "reverse fuse:10",
      "2": "ground",
      "3": "switched-feed fuse:10",
      "4": "constant-feed RD fuse:15",
      "5": "ignition-feed fuse:10",
    })
    .module("A1", {
      role: "camera",
      sleeps,
      rows: { "1": "camera-power RD 0.2A", "2": "ground BK", ...rows },
    });

testRule(rule, {
  silent: [
    { name: "fed in reverse", build: camera().wire("X1.1", "A1.1") },
    { name: "fed with the key on", build: camera().wire("X1.5", "A1.1") },
    { name: "fed in accessory", build: camera().wire("X1.3", "A1.1") },
    {
      name: "a hand switch in a constant feed",
      build: camera().part("switch", "S1", { operatedBy: "hand" }).path("X1.4", "S1", "A1.1"),
    },
    {
      name: "a recorder that remembers by its constant feed and wakes by its trigger",
      build: camera({ "1": "constant-feed", "3": "camera-trigger takes" })
        .wire("X1.4", "A1.1")
        .wire("X1.1", "A1.3"),
    },
    { name: "its sheet says that it sleeps", build: camera({}, "yes").wire("X1.4", "A1.1") },
  ],
  found: [
    {
      name: "on the constant feed",
      build: camera().wire("X1.4", "A1.1"),
      findings: [{ at: ["A1.1", "X1.4"], says: "A1 is fed with the key off", fix: null }],
    },
    {
      name: "from the battery through a fuse, drawn as a load",
      build: camera()
        .part("supply", "G1")
        .part("load", "E1", { type: "camera", function: "camera-power" })
        .path("G1.+", "F1", "E1.+"),
      findings: [{ at: ["E1.+", "G1.+"], fix: null }],
    },
    {
      name: "by a mated plug whose other half calls it the same",
      build: build()
        .module("A1", { role: "camera" })
        .receptacle("X1", "A1", { "1": "camera-power" })
        .vehicle("X2", { "1": "camera-power" })
        .vehicle("X3", { "1": "constant-feed" })
        .mate("X1", "X2")
        .wire("X3.1", "X2.1"),
      findings: [{ at: ["X2.1", "X3.1"], fix: null }],
    },
    {
      name: "through a relay that the constant feed holds",
      build: camera()
        .part("relay", "K1")
        .path("X1.4", "XJ1", "K1.86")
        .path("K1.85", "X1.2")
        .path("XJ1", "K1.30")
        .wire("K1.87", "A1.1"),
      findings: [{ at: ["A1.1", "X1.4"], fix: null }],
    },
  ],
});
