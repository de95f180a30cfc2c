import rule from "../../../src/rules/rules/feeds/feeds-swapped.ts";
import { build } from "../../build.ts";
import { feeds, joined } from "../harnesses.ts";
import { testRule } from "../test-rule.ts";

const crossed = () => feeds().path("X1.A8", "XJ3", "X2.3");

testRule(rule, {
  silent: [
    { name: "each on its own kind", build: joined() },
    { name: "nothing joined yet", build: feeds() },
    {
      name: "both on constant: another rule's",
      build: crossed().path("X1.A4", "XJ1", "X2.1").path("XJ1", "X2.2"),
    },
    {
      name: "both on switched: another rule's",
      build: crossed().path("X1.A7", "XJ1", "X2.1").path("XJ1", "X2.2"),
    },
    {
      name: "a unit whose crossover pair is set to crossed",
      build: build()
        .module("A1", { feedsCrossed: true })
        .vehicle("X1", { A4: "constant-feed", A7: "switched-feed" })
        .receptacle("X2", "A1", { "1": "constant-feed", "2": "switched-feed" })
        .wire("X1.A4", "X2.2")
        .wire("X1.A7", "X2.1"),
    },
    {
      name: "a switched input on constant through a switch that somebody turns",
      build: feeds().path("X1.A4", "XJ1", "X2.1").path("XJ1", "S1", "X2.2"),
    },
    {
      name: "a switched input on constant through a relay that the key pulls in",
      build: crossed()
        .part("relay", "K1", { poles: "make" })
        .path("X1.A4", "XJ1", "X2.1")
        .path("XJ1", "K1.30")
        .path("K1.87", "X2.2")
        .path("X1.A7", "K1.86")
        .path("K1.85", "XE1"),
    },
  ],
  found: [
    {
      name: "crossed at the joints",
      build: crossed().path("X1.A4", "XJ1", "X2.2").path("X1.A7", "XJ2", "X2.1"),
      findings: [
        {
          at: ["X2.1", "X2.2"],
          says: "Constant and switched are swapped: X2.1 constant feed (yellow) is fed from X1.A7 switched feed (yellow)",
          fix: "Exchange the two leads at XJ2 and XJ1",
        },
      ],
    },
    {
      name: "crossed in the cavities",
      build: crossed().wire("X1.A4", "X2.2").wire("X1.A7", "X2.1"),
      findings: [{ at: ["X2.1", "X2.2"], fix: "Exchange the two leads at X2.1 and X2.2" }],
    },
    {
      name: "crossed behind fuses",
      build: crossed().path("X1.A4", "F1", "X2.2").path("X1.A7", "F2", "X2.1"),
      findings: [{ at: ["X2.1", "X2.2"], fix: "Exchange the two leads at X2.1 and X2.2" }],
    },
    {
      name: "an ignition lead is switched too",
      build: build()
        .vehicle("X1", { "30": "constant-feed", "15": "ignition-feed" })
        .unit("X2", { "1": "constant-feed", "2": "ignition-feed" })
        .wire("X1.30", "X2.2")
        .wire("X1.15", "X2.1"),
      findings: [{ at: ["X2.1", "X2.2"], fix: "Exchange the two leads at X2.1 and X2.2" }],
    },
    {
      name: "half of it: the constant input on switched, the switched one open",
      build: crossed().path("X1.A7", "XJ1", "X2.1"),
      findings: [{ at: ["X2.1"], says: "A constant input is on a switched lead", fix: null }],
    },
    {
      name: "the other half: the switched input on constant, the constant one open",
      build: crossed().path("X1.A4", "XJ1", "X2.2"),
      findings: [{ at: ["X2.2"], says: "A switched input is on a constant lead", fix: null }],
    },
  ],
});
