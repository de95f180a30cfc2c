import { lamp, SEALED } from "../../../src/rules/examples/joints/lamp.ts";
import rule from "../../../src/rules/rules/joints/green-and-yellow-on-low-voltage.ts";
import { testRule } from "../test-rule.ts";

const HIGH = { vehicle: { highVoltage: "yes", lamps: "unknown" } } as const;
const aboard = (base: "GN" | "YE" | "GNYE", tracer: "YE" | "GN" | "BK" | null) =>
  lamp(SEALED, {}, { colour: { base, tracer } });

testRule(rule, {
  silent: [
    {
      name: "no high voltage",
      build: aboard("GN", "YE").settings({ vehicle: { highVoltage: "no", lamps: "unknown" } }),
    },
    { name: "nobody has said", build: aboard("GN", "YE") },
    { name: "green alone", build: aboard("GN", null).settings(HIGH) },
    { name: "yellow and black", build: aboard("YE", "BK").settings(HIGH) },
    {
      name: "marked in words",
      build: aboard("GN", "YE").settings(HIGH).change("W2", { label: "illumination 12 V" }),
    },
    {
      name: "a lead that the vehicle has in this colour",
      build: lamp(SEALED).vehicle("X3", { "1": "reverse GN/YE" }).wire("X3.1", "XC1").settings(HIGH),
    },
  ],
  found: [
    {
      name: "green with yellow",
      build: aboard("GN", "YE").settings(HIGH),
      findings: [{ at: ["W2"], says: "green with a yellow tracer", fix: null }],
    },
    {
      name: "yellow with green",
      build: aboard("YE", "GN").settings(HIGH),
      findings: [{ at: ["W2"], fix: null }],
    },
    {
      name: "as one colour",
      build: aboard("GNYE", null).settings(HIGH),
      findings: [{ at: ["W2"], fix: null }],
    },
  ],
});
