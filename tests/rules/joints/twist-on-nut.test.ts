import { lamp, SEALED } from "../../../src/rules/examples/joints/lamp.ts";
import rule from "../../../src/rules/rules/joints/twist-on-nut.ts";
import { testRule } from "../test-rule.ts";

testRule(rule, {
  silent: [
    { name: "soldered", build: lamp(SEALED) },
    { name: "a terminal block", build: lamp({ method: "terminal-block", cover: "housing" }) },
    { name: "nobody has said", build: lamp({ cover: "housing" }) },
  ],
  found: [
    {
      name: "a nut",
      build: lamp({ method: "twist-on-nut", cover: "housing" }),
      findings: [{ at: ["XJ1"], says: "twist-on nut", fix: null }],
    },
    {
      name: "a nut under tape, outside",
      build: lamp({ method: "twist-on-nut", cover: "tape", zone: "outside" }),
      findings: [{ at: ["XJ1"], fix: null }],
    },
  ],
});
