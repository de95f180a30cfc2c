import rule from "../../../src/rules/rules/trailer/lamp-outside-its-class.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const lamp = (line: string, name: string, ...amps: readonly (number | "unknown")[]) => {
  const harness = build().vehicle("X1", { "1": line });
  for (const [index, current_A] of amps.entries())
    harness
      .part("load", `E${index + 1}`, { type: "lamp", function: name, current_A })
      .wire("X1.1", `E${index + 1}.+`);
  return harness;
};

testRule(rule, {
  silent: [
    { name: "a bulb of 21 W", build: lamp("indicator-left watched", "indicator-left", 1.75) },
    { name: "two of them", build: lamp("stop-lamp watched", "stop-lamp", 1.75, 1.75) },
    { name: "an output that nobody watches", build: lamp("indicator-left plain", "indicator-left", 0.1) },
    { name: "nobody has said", build: lamp("indicator-left", "indicator-left", 0.1) },
    { name: "a current that nobody has stated", build: lamp("stop-lamp watched", "stop-lamp", "unknown") },
    {
      name: "24 V, half the current",
      build: lamp("indicator-left watched", "indicator-left", 0.875).settings({ systemVoltage_V: 24 }),
    },
    {
      name: "a resistor makes up for it",
      build: lamp("indicator-left watched", "indicator-left", 0.1)
        .part("resistor", "R1", { resistance_ohm: 8 })
        .path("X1.1", "R1", "XE1"),
    },
  ],
  found: [
    {
      name: "LEDs",
      build: lamp("indicator-left watched", "indicator-left", 0.15),
      findings: [{ at: ["E1.+", "X1.1"], says: "0.15 A", fix: null }],
    },
    {
      name: "four tail lamps of 10 W, on a vehicle that watches all",
      build: lamp("tail-left", "tail-left", 0.8, 0.8).settings({
        vehicle: { highVoltage: "unknown", lamps: "watched" },
      }),
      findings: [{ at: ["E1.+", "E2.+", "X1.1"], says: "1.6 A", fix: null }],
    },
  ],
});
