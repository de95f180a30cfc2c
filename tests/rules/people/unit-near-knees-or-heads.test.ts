import rule from "../../../src/rules/rules/people/unit-near-knees-or-heads.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

testRule(rule, {
  silent: [
    { name: "nobody has said where it stands", build: build().module("A1") },
    {
      name: "in the driver's sight is another rule's",
      build: build().module("A1", { near: ["drivers-sight"] }),
    },
    {
      name: "a run there is no box",
      build: build()
        .vehicle("X1", { "1": "mute" })
        .wire("X1.1", "XC1")
        .run("R1", { near: ["knees-or-heads"] }, ["W1"]),
    },
  ],
  found: [
    {
      name: "an amplifier under the dash",
      build: build().module("A1", { role: "amplifier", near: ["knees-or-heads"] }),
      findings: [{ at: ["A1"], says: "A1 stands where knees or heads strike", fix: null }],
    },
    {
      name: "two boxes are two findings",
      build: build()
        .module("A1", { near: ["knees-or-heads"] })
        .module("A2", { near: ["knees-or-heads", "pedals"] }),
      findings: [
        { at: ["A1"], fix: null },
        { at: ["A2"], fix: null },
      ],
    },
  ],
});
