import { loom } from "../../../src/rules/examples/routing/loom.ts";
import rule from "../../../src/rules/rules/routing/loom-near-ignition.ts";
import { testRule } from "../test-rule.ts";

testRule(rule, {
  silent: [
    { name: "conduit", build: loom({ near: ["ignition"], covering: "conduit" }) },
    { name: "nothing near", build: loom({ zone: "engine-bay" }) },
    { name: "near heat", build: loom({ near: ["heat"] }) },
  ],
  found: [
    {
      name: "bare",
      build: loom({ near: ["ignition"] }),
      findings: [{ at: ["W1", "W2"], says: "the ignition's leads", fix: null }],
    },
    {
      name: "tape",
      build: loom({ near: ["heat", "ignition"], covering: "cloth-tape" }),
      findings: [{ at: ["W1", "W2"], fix: null }],
    },
  ],
});
