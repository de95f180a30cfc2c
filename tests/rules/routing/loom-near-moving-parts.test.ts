import { loom } from "../../../src/rules/examples/routing/loom.ts";
import rule from "../../../src/rules/rules/routing/loom-near-moving-parts.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

testRule(rule, {
  silent: [
    { name: "a fixed conduit", build: loom({ near: ["pedals"], covering: "conduit" }) },
    { name: "near something else", build: loom({ near: ["heat", "trim-screws"] }) },
    { name: "nothing near", build: loom({ covering: "none" }) },
  ],
  found: [
    {
      name: "pedals",
      build: loom({ near: ["pedals"] }),
      findings: [{ at: ["W1", "W2"], says: "B1 comes close to the pedals", severity: "danger", fix: null }],
    },
    {
      name: "seat rails",
      build: loom({ near: ["seat-rails"], covering: "split-loom" }),
      findings: [{ at: ["W1", "W2"], says: "the rails of a seat", fix: null }],
    },
    {
      name: "moving parts and pedals",
      build: loom({ near: ["moving-parts", "pedals"] }),
      findings: [{ at: ["W1", "W2"], says: "the pedals and parts that move", severity: "danger", fix: null }],
    },
    {
      name: "moving parts, without a fuse",
      build: build()
        .part("supply", "G1", { cover: "boot" })
        .part("load", "E1")
        .wire("G1.+", "E1.+", "RD")
        .path("E1.−", "XE1")
        .run("B1", { near: ["moving-parts"] }, ["W1"]),
      findings: [{ at: ["W1"], severity: "danger", fix: null }],
    },
  ],
});
