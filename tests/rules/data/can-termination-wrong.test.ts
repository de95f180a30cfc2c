import rule from "../../../src/rules/rules/data/can-termination-wrong.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const bus = () =>
  build()
    .module("A1", { rows: { H: "can-high", L: "can-low" } })
    .module("A2", { rows: { H: "can-high", L: "can-low" } })
    .wire("A1.H", "A2.H")
    .wire("A1.L", "A2.L");
const across = (...values: readonly (number | "unknown")[]) => {
  const harness = bus();
  for (const [index, ohm] of values.entries())
    harness.part("resistor", `R${index + 1}`, { resistance_ohm: ohm }).path("A1.H", `R${index + 1}`, "A1.L");
  return harness;
};

testRule(rule, {
  silent: [
    { name: "one at each end", build: across(120, 120) },
    { name: "none drawn: they may be in the boxes", build: bus() },
    { name: "of usual tolerance", build: across(118, 124) },
    { name: "a fault-tolerant bus of low speed", build: across(5600) },
    {
      name: "split in two halves with a capacitor",
      build: across(120)
        .part("resistor", "R7", { resistance_ohm: 60 })
        .part("resistor", "R8", { resistance_ohm: 60 })
        .part("capacitor", "C1")
        .path("A2.H", "R7", "XJ1", "R8", "A2.L")
        .path("XJ1", "C1", "XE1"),
    },
    {
      name: "a resistor of something else",
      build: across(120, 120).part("resistor", "R9", { resistance_ohm: 47 }).path("A1.H", "R9", "XC1"),
    },
  ],
  found: [
    { name: "only one", build: across(120), findings: [{ at: ["R1"], says: "120 Ω", fix: null }] },
    {
      name: "three",
      build: across(120, 120, 120),
      findings: [{ at: ["R1", "R2", "R3"], says: "40 Ω", fix: null }],
    },
    {
      name: "of the wrong value",
      build: across(120, 12),
      findings: [{ at: ["R1", "R2"], severity: "fault", says: "R2 (12 Ω)", fix: null }],
    },
    {
      name: "one ten times too large",
      build: across(120, 1200),
      findings: [{ at: ["R1", "R2"], fix: null }],
    },
    {
      name: "a third one on the vehicle's bus, through joints",
      build: build()
        .vehicle("X1", { "3": "can-high", "4": "can-low" })
        .unit("X2", { "3": "can-high", "4": "can-low" })
        .path("X1.3", "XJ1", "X2.3")
        .path("X1.4", "XJ2", "X2.4")
        .part("resistor", "R1", { resistance_ohm: 120 })
        .part("resistor", "R2", { resistance_ohm: 120 })
        .part("resistor", "R3")
        .path("XJ1", "R1", "XJ2")
        .path("XJ1", "R2", "XJ2")
        .path("XJ1", "R3", "XJ2"),
      findings: [{ at: ["R1", "R2", "R3"], fix: null }],
    },
  ],
});
