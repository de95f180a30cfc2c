import rule from "../../../src/rules/rules/data/data-lead-grounded.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const boxes = () =>
  build()
    .vehicle("X1", { "4": "lin", "8": "ground BN" })
    .unit("X2", { "3": "ground BK", "4": "lin", "5": "shield-drain" });

testRule(rule, {
  silent: [
    { name: "only the shield", build: boxes().wire("X1.4", "X2.4").wire("X2.5", "X1.8") },
    {
      name: "a capacitor to ground",
      build: boxes().wire("X1.4", "X2.4").part("capacitor", "C1").path("X2.4", "C1", "XE1"),
    },
    {
      name: "a resistor to ground",
      build: boxes()
        .wire("X1.4", "X2.4")
        .part("resistor", "R1", { resistance_ohm: 100 })
        .path("X2.4", "R1", "XE1"),
    },
  ],
  found: [
    {
      name: "on the vehicle's ground",
      build: boxes().path("X1.4", "XJ1", "X2.4").wire("XJ1.2", "X1.8"),
      findings: [{ at: ["X1.4", "X1.8", "X2.4"], says: "held at ground", fix: null }],
    },
    {
      name: "on a stud, by way of the shield",
      build: boxes().wire("X2.4", "X2.5").wire("X2.5", "XE1"),
      findings: [{ at: ["X2.4", "XE1"], fix: null }],
    },
  ],
});
