import rule from "../../../src/rules/rules/control/parking-brake-grounded.ts";
import { build } from "../../build.ts";
import { joined } from "../harnesses.ts";
import { testRule } from "../test-rule.ts";

const screen = () => build().unit("X2", { "9": "parking-brake GN" });

testRule(rule, {
  silent: [
    {
      name: "through a relay that pulls in reverse only",
      build: screen()
        .vehicle("X1", { "1": "reverse RD fuse:10" })
        .part("relay", "K1", { poles: "changeover" })
        .path("X2.9", "K1.87")
        .path("K1.30", "XE1")
        .path("X1.1", "K1.86")
        .path("K1.85", "XE2"),
    },
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
      name: "through a relay that the key pulls in",
      build: screen()
        .vehicle("X1", { "1": "switched-feed RD fuse:10" })
        .part("relay", "K1", { poles: "changeover" })
        .path("X2.9", "K1.87")
        .path("K1.30", "XE1")
        .path("X1.1", "K1.86")
        .path("K1.85", "XE2"),
      findings: [{ at: ["X2.9"], says: "grounded for good at XE1;", fix: null }],
    },
    {
      name: "through the rest contact of a relay",
      build: screen()
        .vehicle("X1", { "1": "reverse RD fuse:10" })
        .part("relay", "K1", { poles: "changeover" })
        .path("X2.9", "K1.87a")
        .path("K1.30", "XE1")
        .path("X1.1", "K1.86")
        .path("K1.85", "XE2"),
      findings: [{ at: ["X2.9"], fix: null }],
    },
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
