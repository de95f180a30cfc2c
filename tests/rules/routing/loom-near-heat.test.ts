import { loom } from "../../../src/rules/examples/routing/loom.ts";
import rule from "../../../src/rules/rules/routing/loom-near-heat.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

testRule(rule, {
  silent: [
    { name: "a heat sleeve", build: loom({ near: ["heat"], covering: "heat-sleeve" }) },
    { name: "conduit", build: loom({ near: ["heat"], covering: "conduit" }) },
    { name: "wire made for it", build: loom({ near: ["heat"] }, { insulation: "silicone" }) },
    { name: "far from it", build: loom({ covering: "none", zone: "engine-bay" }) },
  ],
  found: [
    {
      name: "tape",
      build: loom({ near: ["heat"], covering: "cloth-tape" }),
      findings: [{ at: ["W1", "W2"], says: "close to something hot", fix: null }],
    },
    {
      name: "nobody has said what covers it",
      build: loom({ near: ["heat"] }),
      findings: [{ at: ["W1", "W2"], fix: null }],
    },
    {
      name: "one wire of common make among others",
      build: loom({ near: ["heat"] }, { insulation: "silicone" }).change("W2", {
        insulation: "thin-wall-105",
      }),
      findings: [{ at: ["W1", "W2"], fix: null }],
    },
    {
      name: "without a fuse",
      build: build()
        .part("supply", "G1", { cover: "boot" })
        .part("load", "E1")
        .wire("G1.+", "E1.+", "RD")
        .path("E1.−", "XE1")
        .run("B1", { near: ["heat"] }, ["W1"]),
      findings: [{ at: ["W1"], severity: "danger", says: "W1 (red) in it has no fuse", fix: null }],
    },
  ],
});
