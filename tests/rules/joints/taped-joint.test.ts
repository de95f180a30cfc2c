import { lamp, SEALED } from "../../../src/rules/examples/joints/lamp.ts";
import rule from "../../../src/rules/rules/joints/taped-joint.ts";
import { testRule } from "../test-rule.ts";

const FIX = "Cover XJ1 with an adhesive-lined sleeve";

testRule(rule, {
  silent: [
    { name: "sleeved", build: lamp(SEALED) },
    { name: "cloth tape over tape", build: lamp({ method: "solder-and-sleeve", cover: "cloth-over-tape" }) },
    { name: "twisted and taped is told as twisted", build: lamp({ method: "twisted", cover: "tape" }) },
    { name: "nobody has said", build: lamp({ method: "solder-and-sleeve" }) },
  ],
  found: [
    {
      name: "solder under tape",
      build: lamp({ method: "solder-and-sleeve", cover: "tape" }),
      findings: [{ at: ["XJ1"], says: "has only tape over it", fix: FIX }],
    },
    {
      name: "a crimp under tape",
      build: lamp({ method: "crimped-butt", cover: "tape" }),
      findings: [{ at: ["XJ1"], fix: FIX }],
    },
    {
      name: "nobody has said how it is made",
      build: lamp({ cover: "tape" }),
      findings: [{ at: ["XJ1"], fix: null }],
    },
  ],
});
