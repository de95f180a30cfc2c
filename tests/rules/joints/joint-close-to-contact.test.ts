import { lamp, SEALED } from "../../../src/rules/examples/joints/lamp.ts";
import rule from "../../../src/rules/rules/joints/joint-close-to-contact.ts";
import { testRule } from "../test-rule.ts";

testRule(rule, {
  silent: [
    { name: "exactly 40 mm", build: lamp(SEALED, { length_m: 0.04 }) },
    { name: "nobody has said", build: lamp(SEALED) },
    { name: "bullets", build: lamp({ method: "bullet-pair" }, { length_m: 0.02 }) },
    { name: "close to a lamp, not to a plug", build: lamp(SEALED, {}, { length_m: 0.02 }) },
  ],
  found: [
    {
      name: "20 mm",
      build: lamp(SEALED, { length_m: 0.02 }),
      findings: [{ at: ["XJ1", "W1"], says: "XJ1 sits 20 mm from X1.1", fix: null }],
    },
    {
      name: "a crimp at 35 mm",
      build: lamp({ method: "crimped-butt" }, { length_m: 0.035 }),
      findings: [{ at: ["XJ1", "W1"], fix: null }],
    },
  ],
});
