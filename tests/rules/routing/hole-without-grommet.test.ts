import { fused, loom } from "../../../src/rules/examples/routing/loom.ts";
import rule from "../../../src/rules/rules/routing/hole-without-grommet.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const bare = { passes: [{ what: "bulkhead", protection: "none" }] } as const;
const through = (protection: "grommet" | "gaiter" | "clamp" | "unknown") => ({
  passes: [{ what: "bulkhead", protection }],
});

testRule(rule, {
  silent: [
    { name: "a grommet", build: fused(through("grommet")) },
    { name: "clamped clear of the edge", build: fused(through("clamp")) },
    { name: "a gaiter", build: fused(through("gaiter")) },
    { name: "nobody has said", build: fused(through("unknown")) },
    { name: "no hole", build: fused({}) },
  ],
  found: [
    {
      name: "illumination and ground",
      build: loom(bare),
      findings: [{ at: ["W1", "W2"], says: "B1 passes bulkhead without a grommet", fix: null }],
    },
    {
      name: "a lead that is live at all times",
      build: fused(bare),
      findings: [{ at: ["W2"], severity: "danger", says: "W2 (red) in it is live at all times", fix: null }],
    },
    {
      name: "a lead without a fuse",
      build: build()
        .part("supply", "G1", { cover: "boot" })
        .part("load", "E1")
        .wire("G1.+", "E1.+", "RD")
        .path("E1.−", "XE1")
        .run("B1", bare, ["W1"]),
      findings: [{ at: ["W1"], severity: "danger", says: "live with no fuse", fix: null }],
    },
    {
      name: "the second of two holes, whose name nobody has said",
      build: loom({
        passes: [
          { what: "floor", protection: "grommet" },
          { what: "", protection: "none" },
        ],
      }),
      findings: [{ at: ["W1", "W2"], says: "B1 passes a hole", fix: null }],
    },
    {
      name: "a constant feed of the vehicle, by way of a joint",
      build: build()
        .vehicle("X1", { "1": "constant-feed RD fuse:15" })
        .unit("X2", { "1": "constant-feed YE" })
        .path("X1.1", "XJ1", "X2.1")
        .run("B1", bare, ["W2"]),
      findings: [{ at: ["W2"], severity: "danger", fix: null }],
    },
  ],
});
