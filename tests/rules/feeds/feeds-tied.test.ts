import rule from "../../../src/rules/rules/feeds/feeds-tied.ts";
import { build } from "../../build.ts";
import { feeds, joined } from "../harnesses.ts";
import { testRule } from "../test-rule.ts";

testRule(rule, {
  silent: [
    {
      name: "joined through a relay that the key pulls in",
      build: joined()
        .part("relay", "K1", { poles: "make" })
        .path("XJ1", "K1.30")
        .path("K1.87", "XJ2")
        .path("X1.A7", "K1.86")
        .path("K1.85", "XE1"),
    },
    {
      name: "each through a diode to one input",
      build: feeds()
        .part("diode", "D1")
        .part("diode", "D2")
        .path("X1.A4", "D1", "X2.1")
        .path("X1.A7", "D2", "X2.1"),
    },
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
      name: "each behind a fuse, then in one joint",
      build: feeds().path("X1.A4", "F1", "XJ1", "X2.1").path("X1.A7", "F2", "XJ1"),
      findings: [
        {
          at: ["X1.A4", "X1.A7"],
          says: "X1.A4 constant feed (red) feeds back into X1.A7 switched feed (yellow)",
          fix: null,
        },
      ],
    },
    {
      name: "through a diode that points at the vehicle's switched lead",
      build: joined().part("diode", "D1").path("XJ1", "D1", "XJ2"),
      findings: [{ at: ["X1.A4", "X1.A7"], says: "feeds back", fix: null }],
    },
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
