import rule from "../../../src/rules/rules/feeds/isolator-bypassed.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const van = () =>
  build()
    .part("supply", "G1")
    .part("switch", "S1", { operatedBy: "isolator" })
    .part("load", "E1")
    .path("G1.+", "S1", "XJ1", "F1", "E1.+")
    .path("E1.−", "XE1", "G1.−")
    .module("A1", { rows: { "1": "constant-feed", "2": "ground" } })
    .path("A1.2", "XE1");

testRule(rule, {
  silent: [
    { name: "all behind the switch", build: van().path("XJ1", "F2", "A1.1") },
    {
      name: "no master switch at all",
      build: van().change("S1", { operatedBy: "hand" }).path("G1.+", "F2", "A1.1"),
    },
    {
      name: "a charger belongs before it",
      build: van().change("A1", { role: "charger" }).path("G1.+", "F2", "A1.1"),
    },
    {
      name: "a bilge pump belongs before it",
      build: van().part("load", "E2", { type: "motor", function: "bilge-pump" }).path("G1.+", "F2", "E2.+"),
    },
    {
      name: "a second battery without a switch, joined by a relay",
      build: van()
        .part("supply", "G2")
        .part("relay", "K1", { poles: "make" })
        .path("XJ1", "K1.30")
        .path("K1.87", "G2.+")
        .path("G2.+", "F2", "A1.1"),
    },
    {
      name: "a switch in the negative lead: another rule's",
      build: build()
        .part("supply", "G1")
        .part("switch", "S1", { operatedBy: "isolator" })
        .part("load", "E1")
        .path("G1.+", "F1", "E1.+")
        .path("E1.−", "XE1")
        .path("XE2", "S1", "G1.−"),
    },
  ],
  found: [
    {
      name: "straight from the battery",
      build: van().path("G1.+", "F2", "A1.1"),
      findings: [
        {
          at: ["A1.1", "S1"],
          says: "A1.1 constant feed is fed from G1.+ past the master switch S1",
          fix: null,
        },
      ],
    },
    {
      name: "from a joint before it, through a hand switch",
      build: van().path("G1.+", "XJ2", "F2", "S2", "A1.1"),
      findings: [{ at: ["A1.1", "S1"], fix: null }],
    },
    {
      name: "both before and behind it",
      build: van().part("load", "E2").path("XJ1", "F2", "A1.1").path("G1.+", "F3", "E2.+"),
      findings: [{ at: ["E2.+", "S1"], fix: null }],
    },
  ],
});
