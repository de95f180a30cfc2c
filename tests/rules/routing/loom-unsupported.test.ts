import { loom } from "../../../src/rules/examples/routing/loom.ts";
import rule from "../../../src/rules/rules/routing/loom-unsupported.ts";
import { testRule } from "../test-rule.ts";

testRule(rule, {
  silent: [
    { name: "610 mm exactly", build: loom({ support_m: 0.61 }) },
    { name: "nobody has said", build: loom({ length_m: 4 }) },
    { name: "a piece shorter than that", build: loom({ support_m: 0.7, length_m: 0.5 }) },
    {
      name: "where the shop allows more",
      build: loom({ support_m: 0.7 }).rules({ limits: [{ name: "support_mm", value: 800 }] }),
    },
  ],
  found: [
    {
      name: "700 mm",
      build: loom({ support_m: 0.7 }),
      findings: [
        { at: ["W1", "W2"], says: "B1 has 700 mm from clip to clip; 610 mm are the most", fix: null },
      ],
    },
    {
      name: "aboard a boat",
      build: loom({ support_m: 1, length_m: 3 }).rules({ profile: "boat" }),
      findings: [{ at: ["W1", "W2"], says: "46 CFR 183.340", fix: null }],
    },
    {
      name: "where the shop asks for less",
      build: loom({ support_m: 0.4 }).rules({ limits: [{ name: "support_mm", value: 300 }] }),
      findings: [{ at: ["W1", "W2"], fix: null }],
    },
  ],
});
