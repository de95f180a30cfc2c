import { loom } from "../../../src/rules/examples/routing/loom.ts";
import rule from "../../../src/rules/rules/routing/no-drip-loop.ts";
import { testRule } from "../test-rule.ts";

testRule(rule, {
  silent: [
    { name: "a loop", build: loom({ zone: "outside", dripLoop: "yes" }) },
    { name: "nobody has said", build: loom({ zone: "outside" }) },
    { name: "inside", build: loom({ zone: "cabin", dripLoop: "no" }) },
    { name: "nobody has said where", build: loom({ dripLoop: "no" }) },
  ],
  found: [
    {
      name: "outside",
      build: loom({ zone: "outside", dripLoop: "no" }),
      findings: [{ at: ["W1", "W2"], says: "B1 lies outside", fix: null }],
    },
    {
      name: "engine bay",
      build: loom({ zone: "engine-bay", dripLoop: "no" }),
      findings: [{ at: ["W1", "W2"], says: "in the engine bay", fix: null }],
    },
    {
      name: "door",
      build: loom({ zone: "door", dripLoop: "no" }),
      findings: [{ at: ["W1", "W2"], fix: null }],
    },
  ],
});
