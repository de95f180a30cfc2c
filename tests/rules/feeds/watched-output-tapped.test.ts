import rule from "../../../src/rules/rules/feeds/watched-output-tapped.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const lamp = (gives = "watched") =>
  build()
    .vehicle("X1", { "1": `reverse GN fuse:10 ${gives}`, "2": "ground", "3": "constant-feed fuse:10" })
    .part("load", "E1", { type: "lamp", function: "reverse", current_A: 1.75 })
    .path("X1.1", "XJ1", "E1.+")
    .path("E1.−", "X1.2");
const camera = (gives?: string) =>
  lamp(gives)
    .module("A1", { role: "camera", rows: { "1": "camera-power 0.2A", "2": "ground" } })
    .path("A1.2", "XE1");
const watched = { highVoltage: "unknown", lamps: "watched" } as const;

testRule(rule, {
  silent: [
    { name: "the lamp itself", build: lamp() },
    { name: "a plain output", build: camera("plain").path("XJ1", "F1", "A1.1") },
    { name: "nobody has said", build: camera("").path("XJ1", "F1", "A1.1") },
    {
      name: "a trigger is a signal",
      build: lamp()
        .module("A2", { rows: { "1": "camera-trigger 0.01A" } })
        .path("XJ1", "A2.1"),
    },
    {
      name: "a relay's coil, the camera fed from a fuse",
      build: camera()
        .part("relay", "K1", { poles: "make" })
        .path("XJ1", "K1.86")
        .path("K1.85", "XE2")
        .path("X1.3", "K1.30")
        .path("K1.87", "A1.1"),
    },
    {
      name: "a plain output of a vehicle whose lamps are watched",
      build: camera("plain").path("XJ1", "A1.1").settings({ vehicle: watched }),
    },
  ],
  found: [
    {
      name: "a camera at the lamp",
      build: camera().path("XJ1", "F1", "A1.1"),
      findings: [{ at: ["X1.1", "A1.1"], says: "A1.1 camera", fix: null }],
    },
    {
      name: "a pulsed output",
      build: camera("pulsed").path("XJ1", "A1.1"),
      findings: [{ at: ["X1.1", "A1.1"], says: "is cut into pulses", fix: null }],
    },
    {
      name: "a vehicle whose lamps are watched",
      build: camera("").path("XJ1", "A1.1").settings({ vehicle: watched }),
      findings: [{ at: ["X1.1", "A1.1"], fix: null }],
    },
    {
      name: "through a relay's contact",
      build: camera()
        .part("relay", "K1", { poles: "make" })
        .path("XJ1", "K1.30")
        .path("K1.87", "A1.1")
        .path("X1.3", "K1.86")
        .path("K1.85", "XE2"),
      findings: [{ at: ["X1.1", "A1.1"], fix: null }],
    },
    {
      name: "a second lamp of another kind",
      build: lamp()
        .part("load", "E2", { type: "lamp", function: "work-lamp", current_A: 2 })
        .path("XJ1", "E2.+")
        .path("E2.−", "XE1"),
      findings: [{ at: ["X1.1", "E2.+"], fix: null }],
    },
  ],
});
