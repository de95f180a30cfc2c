import rule from "../../../src/rules/rules/feeds/both-feeds-one-kind.ts";
import { feeds, joined } from "../harnesses.ts";
import { testRule } from "../test-rule.ts";

const grounded = () => feeds().path("X1.A8", "XJ3", "X2.3");

testRule(rule, {
  silent: [
    {
      name: "a relay whose coil somebody grounds by hand",
      build: grounded()
        .part("relay", "K1", { poles: "make" })
        .path("X1.A4", "XJ1", "X2.1")
        .path("XJ1", "K1.30")
        .path("K1.87", "X2.2")
        .path("XJ1", "K1.86")
        .path("K1.85", "S1", "XE1"),
    },
    {
      name: "the vehicle's leads meet behind their fuses: the danger speaks",
      build: grounded().path("X1.A4", "F1", "XJ1", "X2.1").path("X1.A7", "F2", "XJ1", "X2.2"),
    },
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
      name: "a relay whose coil is always fed and grounded",
      build: grounded()
        .part("relay", "K1", { poles: "make" })
        .path("X1.A4", "XJ1", "X2.1")
        .path("XJ1", "K1.30")
        .path("K1.87", "X2.2")
        .path("XJ1", "K1.86")
        .path("K1.85", "XE1"),
      findings: [{ at: ["X2.1", "X2.2"], severity: "weak", fix: null }],
    },
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
