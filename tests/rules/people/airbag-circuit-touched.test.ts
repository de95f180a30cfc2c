import rule from "../../../src/rules/rules/people/airbag-circuit-touched.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const wheel = () =>
  build().vehicle("X1", { "1": "airbag YE", "2": "horn BN" }).unit("X2", { "1": "horn", "2": "airbag" });

testRule(rule, {
  silent: [
    {
      name: "the plug has such a cavity, and nothing goes there",
      build: wheel().path("X1.2", "XJ1", "X2.1"),
    },
    {
      name: "mated plugs that carry it through as built",
      build: build().vehicle("X1", { "1": "airbag" }).vehicle("X2", { "1": "airbag" }).mate("X1", "X2"),
    },
    {
      name: "a yellow lead of another function",
      build: build().vehicle("X1", { "1": "mute YE" }).wire("X1.1", "XC1", "YE"),
    },
  ],
  found: [
    {
      name: "tapped at a joint",
      build: wheel().wire("X1.1", "XJ1", "YE").wire("XJ1", "X2.1", "YE"),
      findings: [
        {
          at: ["X1.1", "W1", "W2"],
          says: "W1 and W2 are on an airbag circuit: X1.1 airbag (yellow), with X2.1",
          fix: null,
        },
      ],
    },
    {
      name: "even a cap on it",
      build: wheel().wire("X1.1", "XC1"),
      findings: [{ at: ["X1.1", "W1"], fix: null }],
    },
    {
      name: "carried on as it should not be either: one finding for the circuit",
      build: wheel().wire("X1.1", "X2.2"),
      findings: [{ at: ["X1.1", "W1"], fix: null }],
    },
  ],
});
