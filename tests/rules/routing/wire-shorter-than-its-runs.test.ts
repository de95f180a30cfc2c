import { loom } from "../../../src/rules/examples/routing/loom.ts";
import rule from "../../../src/rules/rules/routing/wire-shorter-than-its-runs.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const joined = (first_m: number, second_m: number) =>
  build()
    .vehicle("X1", { "1": "illumination" })
    .unit("X2", { "1": "illumination" })
    .wire("X1.1", "XJ1", null, { length_m: first_m })
    .wire("XJ1", "X2.1", null, { length_m: second_m })
    .run("B1", { length_m: 1 }, ["W1", "W2"]);

testRule(rule, {
  silent: [
    { name: "as long as its run", build: loom({ length_m: 2 }, { length_m: 2 }) },
    { name: "nobody has said how long it is", build: loom({ length_m: 2 }) },
    { name: "nobody has said how long the run is", build: loom({}, { length_m: 0.1 }) },
    { name: "joined in the middle of its run", build: joined(0.6, 0.5) },
    {
      name: "a spare that is cut off in its run",
      build: build()
        .vehicle("X1", { "1": "mute spare" })
        .wire("X1.1", "XC1", null, { length_m: 0.1 })
        .run("B1", { length_m: 1 }, ["W1"]),
    },
    {
      name: "a fuse in the middle of the run",
      build: build()
        .vehicle("X1", { "1": "constant-feed fuse:15" })
        .unit("X2", { "1": "constant-feed" })
        .wire("X1.1", "F1", null, { length_m: 0.1 })
        .wire("F1", "X2.1", null, { length_m: 1 })
        .run("B1", { length_m: 1 }, ["W1", "W2"]),
    },
    {
      name: "one of three at a joint",
      build: joined(0.6, 0.5)
        .unit("X3", { "1": "illumination" })
        .wire("XJ1.2", "X3.1", null, { length_m: 0.2 }),
    },
  ],
  found: [
    {
      name: "shorter than its run",
      build: loom({ length_m: 2 }, { length_m: 2.5 }).change("W1", { length_m: 1.9 }),
      findings: [{ at: ["W1"], says: "W1 (grey) is 1.9 m long, and its way through B1 is 2 m", fix: null }],
    },
    {
      name: "shorter than two runs together",
      build: loom({ length_m: 2 }, { length_m: 2.5 }).run("B2", { length_m: 1 }, ["W2"]),
      findings: [{ at: ["W2"], says: "B1 and B2 is 3 m", fix: null }],
    },
    {
      name: "two halves of a lead",
      build: joined(0.4, 0.5),
      findings: [{ at: ["W1", "W2"], says: "W1 and W2 are together 0.9 m long", fix: null }],
    },
    {
      name: "shorter than the run that it has for itself",
      build: joined(0.6, 0.5).run("B2", { length_m: 2 }, ["W2"]),
      findings: [{ at: ["W2"], fix: null }],
    },
  ],
});
