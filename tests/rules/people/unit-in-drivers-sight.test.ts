import rule from "../../../src/rules/rules/people/unit-in-drivers-sight.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

testRule(rule, {
  silent: [
    { name: "nobody has said where it stands", build: build().module("A1", { role: "display" }) },
    { name: "elsewhere", build: build().module("A1", { role: "display", near: ["trim-screws"] }) },
    {
      name: "a run there is no screen",
      build: build()
        .vehicle("X1", { "1": "mute" })
        .wire("X1.1", "XC1")
        .run("R1", { near: ["drivers-sight"] }, ["W1"]),
    },
  ],
  found: [
    {
      name: "a display",
      build: build().module("A1", { role: "display", near: ["drivers-sight"] }),
      findings: [{ at: ["A1"], says: "stands in the driver's sight", fix: null }],
    },
    {
      name: "a box without a screen hides the road as well",
      build: build().module("A2", { role: "interface", near: ["knees-or-heads", "drivers-sight"] }),
      findings: [{ at: ["A2"], says: "A2 stands in the driver's sight", fix: null }],
    },
  ],
});
