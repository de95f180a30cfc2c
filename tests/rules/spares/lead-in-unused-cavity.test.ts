import rule from "../../../src/rules/rules/spares/lead-in-unused-cavity.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const plug = () =>
  build().vehicle("X1", { "1": "mute BN", "2": "not-used" }).unit("X2", { "1": "mute", "2": "not-used" });

testRule(rule, {
  silent: [
    { name: "the lead is in its own cavity", build: plug().path("X1.1", "XJ1", "X2.1") },
    { name: "a lead that came with the housing, capped", build: plug().wire("X1.2", "XC1") },
    { name: "two cavities that are not used, joined pin for pin", build: plug().path("X1.2", "XJ1", "X2.2") },
    {
      name: "a cavity of which nobody knows the use",
      build: build().vehicle("X1", { "1": "mute" }).unit("X2", { "1": "unknown" }).wire("X1.1", "X2.1"),
    },
  ],
  found: [
    {
      name: "through a joint",
      build: plug().path("X1.1", "XJ1", "X2.2"),
      findings: [
        {
          at: ["X2.2", "W2"],
          says: "W2 goes to X2.2, which the chart calls not used; it joins X1.1 there",
          fix: null,
        },
      ],
    },
    {
      name: "straight into a module's own contact",
      build: build()
        .vehicle("X1", { "1": "illumination GY" })
        .module("A1", { rows: { "9": "not-used" } })
        .wire("X1.1", "A1.9"),
      findings: [{ at: ["A1.9", "W1"], fix: null }],
    },
  ],
});
