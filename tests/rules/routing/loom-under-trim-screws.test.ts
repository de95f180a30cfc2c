import { loom } from "../../../src/rules/examples/routing/loom.ts";
import rule from "../../../src/rules/rules/routing/loom-under-trim-screws.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

testRule(rule, {
  silent: [
    { name: "nothing near", build: loom({ zone: "cabin" }) },
    { name: "near something else", build: loom({ near: ["drivers-sight"] }) },
    { name: "a run that no wire follows yet", build: loom({}).run("B2", { near: ["trim-screws"] }, []) },
  ],
  found: [
    {
      name: "under screws",
      build: loom({ near: ["trim-screws"] }),
      findings: [{ at: ["W1", "W2"], says: "where the trim's screws come through", fix: null }],
    },
    {
      name: "without a fuse",
      build: build()
        .part("supply", "G1", { cover: "boot" })
        .part("load", "E1")
        .wire("G1.+", "E1.+", "RD")
        .path("E1.−", "XE1")
        .run("B1", { near: ["trim-screws"] }, ["W1"]),
      findings: [{ at: ["W1"], severity: "danger", fix: null }],
    },
  ],
});
