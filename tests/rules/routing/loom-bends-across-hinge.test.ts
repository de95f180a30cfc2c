import { loom } from "../../../src/rules/examples/routing/loom.ts";
import rule from "../../../src/rules/rules/routing/loom-bends-across-hinge.ts";
import { testRule } from "../test-rule.ts";

testRule(rule, {
  silent: [
    { name: "twists along", build: loom({ hinge: "twists-along" }) },
    {
      name: "a gaiter spreads the bend",
      build: loom({ hinge: "bends-across", passes: [{ what: "pillar", protection: "gaiter" }] }),
    },
    { name: "nobody has said", build: loom({ zone: "door" }) },
    { name: "no hinge", build: loom({ hinge: "none" }) },
  ],
  found: [
    {
      name: "bends across",
      build: loom({ hinge: "bends-across" }),
      findings: [{ at: ["W1", "W2"], says: "B1 is bent across a hinge", fix: null }],
    },
    {
      name: "a grommet is no gaiter",
      build: loom({ hinge: "bends-across", passes: [{ what: "pillar", protection: "grommet" }] }),
      findings: [{ at: ["W1", "W2"], fix: null }],
    },
  ],
});
