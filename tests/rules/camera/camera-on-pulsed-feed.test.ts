import rule from "../../../src/rules/rules/camera/camera-on-pulsed-feed.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const camera = (reverse: string) =>
  build()
    .vehicle("X1", { "1": `reverse GN ${reverse}`, "2": "ground", "3": "switched-feed fuse:10" })
    .module("A1", { role: "camera", rows: { "1": "camera-power RD 0.2A", "2": "ground BK" } })
    .wire("X1.2", "A1.2");

testRule(rule, {
  silent: [
    { name: "a lamp's lead measured steady", build: camera("plain").wire("X1.1", "A1.1") },
    { name: "nothing is known of the lead", build: camera("").wire("X1.1", "A1.1") },
    {
      name: "the lamps are watched, and this lead is known to be plain",
      build: camera("plain")
        .settings({ vehicle: { highVoltage: "unknown", lamps: "watched" } })
        .wire("X1.1", "A1.1"),
    },
    {
      name: "a relay driven by the pulsed lead switches a fused feed",
      build: camera("pulsed")
        .part("relay", "K1")
        .path("X1.1", "K1.86")
        .path("K1.85", "X1.2")
        .path("X1.3", "F1", "K1.30")
        .wire("K1.87", "A1.1"),
    },
    {
      name: "fed with the key on, the pulsed lead only triggers the display",
      build: camera("pulsed")
        .module("A2", { role: "display", rows: { "1": "camera-trigger takes" } })
        .wire("X1.1", "A2.1")
        .wire("X1.3", "A1.1"),
    },
    {
      name: "a lamp on the pulsed lead: no camera",
      build: camera("pulsed").part("load", "E1", { type: "lamp", function: "reverse" }).wire("X1.1", "E1.+"),
    },
    {
      name: "a filter box between",
      build: camera("pulsed")
        .module("A2", { role: "other", rows: { "1": "reverse takes", "2": "camera-power gives" } })
        .wire("X1.1", "A2.1")
        .wire("A2.2", "A1.1"),
    },
  ],
  found: [
    {
      name: "straight on a pulsed lead",
      build: camera("pulsed").wire("X1.1", "A1.1"),
      findings: [{ at: ["A1.1", "X1.1"], says: "cut into pulses", fix: null }],
    },
    {
      name: "on a watched lead, through a fuse and a joint",
      build: camera("watched").path("X1.1", "XJ1", "F1", "A1.1"),
      findings: [{ at: ["A1.1", "X1.1"], says: "watched by a lamp controller", fix: null }],
    },
    {
      name: "in a vehicle whose lamps are all watched, a camera drawn as a load",
      build: camera("")
        .settings({ vehicle: { highVoltage: "unknown", lamps: "watched" } })
        .part("load", "E1", { type: "camera", function: "camera-power" })
        .wire("X1.1", "E1.+"),
      findings: [{ at: ["E1.+", "X1.1"], fix: null }],
    },
    {
      name: "through a diode, the camera's lead charted as reverse, 24 V",
      build: camera("pulsed")
        .settings({ systemVoltage_V: 24 })
        .module("A3", { role: "camera" })
        .receptacle("X3", "A3", { "1": "reverse takes" })
        .part("diode", "R1")
        .path("X1.1", "R1", "X3.1"),
      findings: [{ at: ["X3.1", "X1.1"], fix: null }],
    },
  ],
});
