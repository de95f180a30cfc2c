import { lamp, SEALED } from "../../../src/rules/examples/joints/lamp.ts";
import rule from "../../../src/rules/rules/joints/twisted-joint.ts";
import { testRule } from "../test-rule.ts";

testRule(rule, {
  silent: [
    { name: "soldered", build: lamp(SEALED) },
    { name: "nobody has said", build: lamp({ cover: "tape" }) },
    { name: "a crimp under tape", build: lamp({ method: "crimped-butt", cover: "tape" }) },
  ],
  found: [
    {
      name: "twisted and taped",
      build: lamp({ method: "twisted", cover: "tape" }),
      findings: [
        {
          at: ["XJ1"],
          says: "W1 (grey) and W2 (grey) are only twisted together and taped at XJ1",
          fix: null,
        },
      ],
    },
    {
      name: "twisted in a sleeve",
      build: lamp({ method: "twisted", cover: "adhesive-sleeve" }),
      findings: [{ at: ["XJ1"], fix: null }],
    },
    {
      name: "three wires, two on one side",
      build: lamp({ method: "twisted" }).vehicle("X3", { "1": "illumination" }).wire("X3.1", "XJ1"),
      findings: [{ at: ["XJ1"], says: "W4", fix: null }],
    },
  ],
});
