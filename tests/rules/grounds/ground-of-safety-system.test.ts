import rule from "../../../src/rules/rules/grounds/ground-of-safety-system.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const stud = (serves: "safety-system" | "vehicle" | "unknown" = "safety-system") =>
  build().part("ground", "XE1", { serves, surface: "bare-metal" }).unit("X2", { "3": "ground BK" });

testRule(rule, {
  silent: [
    { name: "a stud of the vehicle's", build: stud("vehicle").wire("X2.3", "XE1") },
    { name: "a stud of which nobody knows", build: stud("unknown").wire("X2.3", "XE1") },
    {
      name: "the system's own lead",
      build: stud().vehicle("X1", { "1": "airbag YE", "2": "ground takes BN" }).wire("X1.2", "XE1"),
    },
    { name: "drawn so that nobody takes it", build: stud() },
    { name: "the unit on another stud beside it", build: stud().path("X2.3", "XE2") },
    { name: "the battery's strap", build: stud().part("supply", "G1").wire("G1.−", "XE1") },
  ],
  found: [
    {
      name: "a unit",
      build: stud().wire("X2.3", "XE1"),
      findings: [{ at: ["X2.3", "XE1"], says: "goes to XE1", fix: null }],
    },
    {
      name: "a lamp, through a joint and mated couplers",
      build: stud()
        .part("load", "E1", { type: "lamp" })
        .unit("X5", { "1": "unknown" })
        .vehicle("X6", { "1": "unknown" })
        .mate("X5", "X6")
        .path("E1.−", "XJ1", "X5.1")
        .wire("X6.1", "XE1"),
      findings: [{ at: ["E1.−", "XE1"], fix: null }],
    },
    {
      name: "a module and a relay's coil",
      build: stud()
        .module("A1", { rows: { GND: "ground" } })
        .part("relay", "K1")
        .wire("A1.GND", "XE1")
        .wire("K1.85", "XE1"),
      findings: [{ at: ["A1.GND", "K1.85", "XE1"], says: "go to XE1", fix: null }],
    },
  ],
});
