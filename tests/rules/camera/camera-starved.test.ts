import rule from "../../../src/rules/rules/camera/camera-starved.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

type Range = { least_V: number; most_V: number } | "unknown";
/** W1 is the feed, W2 the ground; the camera draws `current_A`. */
const camera = (
  area_mm2: number,
  length_m: number,
  current_A = 0.3,
  voltage_V: Range = "unknown",
  feed = "reverse",
) =>
  build()
    .vehicle("X1", { "1": `${feed} fuse:10`, "2": "ground" })
    .module("A1", { role: "camera", voltage_V, rows: { "1": `camera-power ${current_A}A`, "2": "ground" } })
    .wire("X1.1", "A1.1", "RD", { area_mm2, length_m })
    .wire("X1.2", "A1.2", "BK", { area_mm2, length_m });

testRule(rule, {
  silent: [
    { name: "a short lead", build: camera(0.5, 2) },
    { name: "six metres of a usual size", build: camera(0.5, 6) },
    {
      name: "the battery has less while cranking than the camera needs: no lead's fault",
      build: camera(0.5, 6, 0.3, { least_V: 11, most_V: 16 }, "ignition-feed"),
    },
    { name: "nobody has said what it draws", build: camera(0.05, 30).change("A1", { cavities: [] }) },
    {
      name: "a 24 V van and a camera for 9 to 32 V",
      build: camera(0.5, 12, 0.3, { least_V: 9, most_V: 32 }).settings({ systemVoltage_V: 24 }),
    },
    {
      name: "not fed at all: another rule's",
      build: build()
        .module("A1", { role: "camera", rows: { "1": "camera-power 0.2A", "2": "ground" } })
        .path("A1.2", "XE1"),
    },
  ],
  found: [
    {
      name: "far on a hair of a lead, while the starter turns",
      build: camera(0.14, 9, 0.4),
      findings: [{ at: ["A1.1"], says: "(crank, reverse, unit on)", fix: null }],
    },
    {
      name: "a stated need",
      build: camera(0.22, 12, 0.5, { least_V: 11.5, most_V: 16 }),
      findings: [{ at: ["A1.1"], says: "it needs 11.5 V", fix: null }],
    },
    {
      name: "the loss is in the ground, a camera drawn as a load",
      build: build()
        .vehicle("X1", { "1": "reverse fuse:10" })
        .part("load", "E1", {
          type: "camera",
          function: "camera-power",
          current_A: 0.5,
          voltage_V: { least_V: 11, most_V: 16 },
        })
        .wire("X1.1", "E1.+", "RD", { area_mm2: 0.5, length_m: 2 })
        .path("E1.−", "XE1")
        .change("W2", { area_mm2: 0.05, length_m: 12 }),
      findings: [{ at: ["E1.+"], says: "E1 gets", fix: null }],
    },
    {
      name: "24 V",
      build: camera(0.1, 20, 0.5, { least_V: 22, most_V: 32 }).settings({ systemVoltage_V: 24 }),
      findings: [{ at: ["A1.1"], says: "it needs 22 V", fix: null }],
    },
  ],
});
