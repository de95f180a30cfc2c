import { fused, loom } from "../../../src/rules/examples/routing/loom.ts";
import rule from "../../../src/rules/rules/routing/bend-too-tight.ts";
import { testRule } from "../test-rule.ts";

testRule(rule, {
  silent: [
    { name: "wide", build: loom({ bend_mm: 30 }) },
    { name: "nobody has said", build: loom({}) },
    { name: "sizes that nobody has said", build: loom({ bend_mm: 1 }, { area_mm2: "unknown" }) },
    { name: "exactly six times one wire of 3 mm", build: fused({ bend_mm: 18 }) },
  ],
  found: [
    {
      name: "tight",
      build: loom({ bend_mm: 10 }),
      findings: [
        {
          at: ["W1", "W2"],
          says: "B1 is bent to 10 mm; its bundle is 3.4 mm thick and wants 20 mm, 6 times that",
          fix: null,
        },
      ],
    },
    {
      name: "just below six times one wire of 3 mm",
      build: fused({ bend_mm: 17.5 }),
      findings: [{ at: ["W2"], fix: null }],
    },
    {
      name: "where the shop asks for ten times",
      build: loom({ bend_mm: 25 }).rules({ limits: [{ name: "bendFactor", value: 10 }] }),
      findings: [{ at: ["W1", "W2"], says: "10 times", fix: null }],
    },
  ],
});
