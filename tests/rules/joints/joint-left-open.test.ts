import { lamp, SEALED } from "../../../src/rules/examples/joints/lamp.ts";
import rule from "../../../src/rules/rules/joints/joint-left-open.ts";
import { testRule } from "../test-rule.ts";

testRule(rule, {
  silent: [
    { name: "two wires", build: lamp(SEALED) },
    {
      name: "one wire, which is told as a loose lead",
      build: lamp(SEALED).vehicle("X3", { "1": "mute" }).wire("X3.1", "XJ5"),
    },
    {
      name: "both wires on one side",
      build: lamp(SEALED).change("W2", { ends: [lamp(SEALED).at("XJ1.1"), lamp(SEALED).at("E1.+")] }),
    },
  ],
  found: [
    {
      name: "no wire",
      build: lamp(SEALED).part("splice", "XJ7"),
      findings: [{ at: ["XJ7"], says: "XJ7 joins nothing", fix: null }],
    },
    {
      name: "no wire, and where it lies is said",
      build: lamp(SEALED).part("splice", "XJ7", { ...SEALED, zone: "door" }),
      findings: [{ at: ["XJ7"], fix: null }],
    },
  ],
});
