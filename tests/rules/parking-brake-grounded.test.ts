import rule from "../../src/rules/rules/parking-brake-grounded.ts";
import { build } from "../build.ts";
import { joined } from "./harnesses.ts";
import { testRule } from "./test-rule.ts";

const screen = () => build().unit("X2", { "9": "parking-brake GN" });

testRule(rule, {
  silent: [
    {
      name: "on the vehicle's lead",
      build: joined({ B1: "parking-brake BN/WH" }, { "9": "parking-brake GN" }).path("X1.B1", "XJ4", "X2.9"),
    },
    {
      name: "through the parking-brake switch to a stud",
      build: screen().part("switch", "S1", { operatedBy: "parking-brake" }).path("X2.9", "S1", "XE1"),
    },
    { name: "not joined", build: screen() },
    { name: "capped", build: screen().path("X2.9", "XC1") },
    {
      name: "the vehicle's own lead on ground",
      build: build().vehicle("X1", { B1: "parking-brake" }).path("X1.B1", "XE1"),
    },
  ],
  found: [
    {
      name: "on a stud",
      build: screen().path("X2.9", "XE1"),
      findings: [{ at: ["X2.9"], says: "X2.9 parking brake (green) is grounded for good at XE1", fix: null }],
    },
    {
      name: "in the joint of the unit's ground",
      build: joined({}, { "9": "parking-brake GN" }).path("X2.9", "XJ3"),
      findings: [{ at: ["X2.9"], says: "X1.A8 ground", fix: null }],
    },
    {
      name: "through a fuse or a small resistor it is ground all the same",
      build: screen().part("resistor", "R1", { resistance_ohm: 100 }).path("X2.9", "F1", "R1", "XE1"),
      findings: [{ at: ["X2.9"], fix: null }],
    },
  ],
});
