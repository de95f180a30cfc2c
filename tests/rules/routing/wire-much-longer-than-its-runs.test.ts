import { loom } from "../../../src/rules/examples/routing/loom.ts";
import rule from "../../../src/rules/rules/routing/wire-much-longer-than-its-runs.ts";
import { testRule } from "../test-rule.ts";

testRule(rule, {
  silent: [
    { name: "a quarter more", build: loom({ length_m: 2 }, { length_m: 2.5 }) },
    { name: "0.3 m more than a short run", build: loom({ length_m: 0.3 }, { length_m: 0.6 }) },
    { name: "nobody has said how long", build: loom({ length_m: 2 }) },
    {
      name: "one of its runs is not measured",
      build: loom({ length_m: 1 }, { length_m: 4 }).run("B2", {}, ["W1", "W2"]),
    },
  ],
  found: [
    {
      name: "half as much again",
      build: loom({ length_m: 2 }, { length_m: 2 }).change("W1", { length_m: 3 }),
      findings: [{ at: ["W1"], says: "W1 (grey) is 3 m long, and its way through B1 is 2 m", fix: null }],
    },
    {
      name: "two runs",
      build: loom({ length_m: 1 }, { length_m: 2 })
        .run("B2", { length_m: 1 }, ["W1", "W2"])
        .change("W2", { length_m: 4 }),
      findings: [{ at: ["W2"], fix: null }],
    },
  ],
});
