import type { Run } from "../../../src/graph/harness.ts";
import rule from "../../../src/rules/rules/drawing/length-without-datum.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const loom = (known: Partial<Run>) =>
  build()
    .vehicle("X1", { "1": "mute" })
    .unit("X2", { "1": "mute" })
    .wire("X1.1", "X2.1")
    .run("R1", known, ["W1"]);

testRule(rule, {
  silent: [
    { name: "no length", build: loom({}) },
    { name: "both ends said", build: loom({ length_m: 2, from: "dash", to: "tail lift" }) },
    { name: "one end said", build: loom({ length_m: 2, from: "back of X1" }) },
    { name: "no wire lies in it", build: build().part("ground", "XE1").run("R1", { length_m: 2 }, []) },
  ],
  found: [
    {
      name: "a length alone",
      build: loom({ length_m: 2.4 }),
      findings: [{ at: ["W1"], says: "Run R1 is 2.4 m long", fix: null }],
    },
    {
      name: "blanks say nothing",
      build: loom({ length_m: 1, from: " " }),
      findings: [{ at: ["W1"], fix: null }],
    },
  ],
});
