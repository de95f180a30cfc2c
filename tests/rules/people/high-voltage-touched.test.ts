import rule from "../../../src/rules/rules/people/high-voltage-touched.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

testRule(rule, {
  silent: [
    {
      name: "the cavity is there, and nothing goes to it",
      build: build().vehicle("X1", { "1": "high-voltage OG" }),
    },
    {
      name: "an orange lead of 12 V",
      build: build().vehicle("X1", { "1": "mute OG" }).wire("X1.1", "XC1", "OG"),
    },
    {
      name: "a feed of 12 V in a vehicle that has high voltage",
      build: build()
        .vehicle("X1", { "1": "constant-feed OG fuse:10" })
        .wire("X1.1", "XC1")
        .settings({ vehicle: { highVoltage: "yes", lamps: "unknown" } }),
    },
  ],
  found: [
    {
      name: "a wire from it",
      build: build().vehicle("X1", { "1": "high-voltage OG" }).wire("X1.1", "XJ1"),
      findings: [
        {
          at: ["X1.1", "W1"],
          says: "W1 is on a high-voltage circuit: X1.1 high voltage (orange)",
          fix: null,
        },
      ],
    },
    {
      name: "two wires, one circuit",
      build: build()
        .vehicle("X1", { "1": "high-voltage" })
        .unit("X2", { "1": "constant-feed" })
        .path("X1.1", "XJ1", "X2.1"),
      findings: [{ at: ["X1.1", "W1", "W2"], fix: null }],
    },
  ],
});
