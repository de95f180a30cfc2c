import rule from "../../../src/rules/rules/joints/capped-with-tape.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const spare = (method: "tape" | "end-cap" | "sleeve-folded-back" | "unknown") =>
  build().vehicle("X1", { "1": "speed WH/BU spare", "2": "mute PK spare" }).part("cap", "XC1", { method });

testRule(rule, {
  silent: [
    { name: "an end cap", build: spare("end-cap").wire("X1.1", "XC1") },
    { name: "folded back", build: spare("sleeve-folded-back").wire("X1.1", "XC1") },
    { name: "nobody has said", build: spare("unknown").wire("X1.1", "XC1") },
    { name: "a cap on nothing", build: spare("tape") },
  ],
  found: [
    {
      name: "tape",
      build: spare("tape").wire("X1.1", "XC1"),
      findings: [{ at: ["XC1"], says: "W1 (white with a blue tracer)", fix: "Put an end cap on XC1" }],
    },
    {
      name: "tape round two",
      build: spare("tape").wire("X1.1", "XC1").wire("X1.2", "XC1"),
      findings: [
        { at: ["XC1"], says: "W1 (white with a blue tracer) and W2 (pink)", fix: "Put an end cap on XC1" },
      ],
    },
  ],
});
