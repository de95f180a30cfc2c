import rule from "../../../src/rules/rules/protection/solid-wire.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const two = (strands: "stranded" | "solid" | "unknown") =>
  build()
    .vehicle("X1", { "1": "illumination GY", "2": "ground" })
    .unit("X2", { "1": "illumination GY", "2": "ground" })
    .wire("X1.1", "X2.1", "GY", { strands });

testRule(rule, {
  silent: [
    { name: "stranded", build: two("stranded") },
    { name: "nobody has said", build: two("unknown") },
    { name: "the core of a coaxial cable", build: two("solid").cable("C1", "coax", ["W1"]) },
  ],
  found: [
    {
      name: "a solid lead",
      build: two("solid"),
      findings: [{ at: ["W1"], says: "W1 (grey) is solid wire", fix: "Make W1 of stranded wire" }],
    },
    {
      name: "a solid core in a cable of several",
      build: two("solid").cable("C1", "multicore", ["W1"]),
      findings: [{ at: ["W1"], fix: "Make W1 of stranded wire" }],
    },
  ],
});
