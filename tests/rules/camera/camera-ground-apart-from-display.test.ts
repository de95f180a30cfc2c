import rule from "../../../src/rules/rules/camera/camera-ground-apart-from-display.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

type Join = "joined" | "isolated" | "unknown";
const boxes = (camera: Join, display: Join) =>
  build()
    .vehicle("X1", { "1": "ignition-feed fuse:10" })
    .module("A1", {
      role: "camera",
      signalGround: camera,
      rows: { "1": "camera-power 0.3A", "2": "ground", "3": "video-signal gives", "4": "video-shield gives" },
    })
    .module("A2", {
      role: "display",
      signalGround: display,
      rows: {
        "1": "ignition-feed 0.5A",
        "2": "ground",
        "3": "video-signal takes",
        "4": "video-shield takes",
      },
    })
    .wire("X1.1", "A1.1", "RD", { length_m: 6, area_mm2: 0.75 })
    .wire("X1.1", "A2.1", "RD", { length_m: 0.5, area_mm2: 0.75 })
    .wire("A1.3", "A2.3")
    .wire("A1.4", "A2.4");
const apart = (camera: Join, display: Join, surface: "bare-metal" | "painted" = "bare-metal") =>
  boxes(camera, display).part("ground", "XE1", { surface }).path("A1.2", "XE1").path("A2.2", "XE2");

testRule(rule, {
  silent: [
    {
      name: "the camera comes back to the display",
      build: boxes("joined", "joined").wire("A1.2", "A2.2").path("A2.2", "XE2"),
    },
    { name: "two good studs, nothing known of the boxes", build: apart("unknown", "unknown") },
    { name: "a camera whose picture is isolated", build: apart("isolated", "joined") },
    { name: "a display whose input is isolated", build: apart("joined", "isolated") },
    { name: "one stud for both", build: boxes("joined", "joined").path("A1.2", "XE1").path("A2.2", "XE1") },
    {
      name: "the picture's return is not joined",
      build: build()
        .module("A1", {
          role: "camera",
          signalGround: "joined",
          rows: { "2": "ground", "3": "video-signal gives" },
        })
        .module("A2", {
          role: "display",
          signalGround: "joined",
          rows: { "2": "ground", "3": "video-signal takes" },
        })
        .wire("A1.3", "A2.3")
        .path("A1.2", "XE1")
        .path("A2.2", "XE2"),
    },
  ],
  found: [
    {
      name: "two studs, and both boxes join their grounds",
      build: apart("joined", "joined"),
      findings: [{ at: ["A1", "A2"], says: "A1 stands on XE1, its display A2 on XE2", fix: null }],
    },
    {
      name: "nothing known of the boxes, and the camera's ground shared with a heater",
      build: boxes("unknown", "unknown")
        .part("load", "E1", { type: "heater", function: "ignition-feed", current_A: 8 })
        .part("splice", "XJ1")
        .wire("X1.1", "E1.+")
        .wire("A1.2", "XJ1.1")
        .wire("E1.−", "XJ1.1")
        .wire("XJ1.2", "XE1", "BK", { length_m: 3, area_mm2: 1 })
        .path("A2.2", "XE2"),
      findings: [{ at: ["A1", "A2"], says: "apart at full load, where 0.1 V is the most", fix: null }],
    },
    {
      name: "a receiver as the display, on the vehicle's own ground",
      build: build()
        .vehicle("X1", { "1": "ground", "2": "ground" })
        .vehicle("X9", { "1": "ground" })
        .module("A1", { role: "camera", signalGround: "joined" })
        .receptacle("X2", "A1", { "1": "camera-ground takes", "2": "video-shield gives" })
        .module("A2", { role: "receiver", signalGround: "joined" })
        .receptacle("X3", "A2", { "1": "ground", "2": "video-shield takes" })
        .path("X2.2", "XJ1", "X3.2")
        .wire("X2.1", "X9.1")
        .wire("X3.1", "X1.1"),
      findings: [{ at: ["A1", "A2"], fix: null }],
    },
  ],
});
