import rule from "../../src/rules/rules/feeds-tied.ts";
import { build } from "../build.ts";
import { feeds, joined } from "./harnesses.ts";
import { testRule } from "./test-rule.ts";

testRule(rule, {
  silent: [
    { name: "each to its own input", build: joined() },
    {
      name: "joined through a diode that points to the unit",
      build: feeds().part("diode", "R1").wire("X1.A4", "X2.1").wire("X1.A7", "R1.A").wire("R1.K", "X2.1"),
    },
    {
      name: "joined through a relay contact",
      build: feeds().part("relay", "K1", { poles: "make" }).wire("X1.A4", "K1.30").wire("K1.87", "X1.A7"),
    },
    {
      name: "two constant cavities of one vehicle",
      build: build().vehicle("X1", { A4: "constant-feed", A9: "constant-feed" }).wire("X1.A4", "X1.A9"),
    },
  ],
  found: [
    {
      name: "tied in one joint",
      build: feeds().path("X1.A4", "XJ1", "X2.1").path("X1.A7", "XJ1"),
      findings: [
        {
          at: ["X1.A4", "X1.A7"],
          says: "X1.A4 constant feed (red) and X1.A7 switched feed (yellow) are tied together",
          fix: null,
        },
      ],
    },
    {
      name: "the battery tied to an ignition lead",
      build: build().part("supply", "G1").vehicle("X1", { "15": "ignition-feed" }).wire("G1.+", "X1.15"),
      findings: [{ at: ["G1.+", "X1.15"], fix: null }],
    },
  ],
});
