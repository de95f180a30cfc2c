import rule from "../../src/rules/rules/both-feeds-one-kind.ts";
import { feeds, joined } from "./harnesses.ts";
import { testRule } from "./test-rule.ts";

const grounded = () => feeds().path("X1.A8", "XJ3", "X2.3");

testRule(rule, {
  silent: [
    { name: "one of each", build: joined() },
    { name: "one of them open", build: grounded().path("X1.A4", "XJ1", "X2.1") },
    {
      name: "a switch that somebody turns in the switched lead",
      build: grounded().path("X1.A4", "XJ1", "X2.1").path("XJ1", "S1", "X2.2"),
    },
    {
      name: "the vehicle's leads tied together: the danger speaks",
      build: grounded().path("X1.A4", "XJ1", "X2.1").path("X1.A7", "XJ1", "X2.2"),
    },
  ],
  found: [
    {
      name: "both on the vehicle's constant",
      build: grounded().path("X1.A4", "XJ1", "X2.1").path("XJ1", "X2.2"),
      findings: [{ at: ["X2.1", "X2.2"], severity: "weak", says: "both on a constant feed", fix: null }],
    },
    {
      name: "both on the vehicle's switched",
      build: grounded().path("X1.A7", "XJ1", "X2.1").path("XJ1", "X2.2"),
      findings: [{ at: ["X2.1", "X2.2"], says: "goes with the key", fix: null }],
    },
    {
      name: "both on the battery, each behind a fuse",
      build: grounded().part("supply", "G1").path("G1.+", "F1", "X2.1").path("G1.+", "F2", "X2.2"),
      findings: [{ at: ["X2.1", "X2.2"], severity: "weak", fix: null }],
    },
  ],
});
