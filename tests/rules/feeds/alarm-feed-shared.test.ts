import rule from "../../../src/rules/rules/feeds/alarm-feed-shared.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const alarm = () =>
  build()
    .part("supply", "G1")
    .module("A1", {
      rows: { "1": "constant-feed", "2": "ground", "3": "alarm-siren gives", "4": "alarm-led gives" },
    })
    .part("load", "E1", { type: "sounder", function: "alarm-siren" })
    .path("A1.3", "E1.+")
    .path("A1.2", "XE1", "G1.−")
    .path("E1.−", "XE1")
    .part("load", "E2", { function: "work-lamp" });

testRule(rule, {
  silent: [
    {
      name: "a branch and a fuse of its own",
      build: alarm().path("G1.+", "XJ1", "F1", "A1.1").path("XJ1", "F2", "E2.+"),
    },
    {
      name: "the siren hangs on the same fuse",
      build: alarm()
        .path("G1.+", "F1", "XJ1", "A1.1")
        .part("load", "E3", { type: "sounder", function: "alarm-siren" })
        .path("XJ1", "E3.+"),
    },
    {
      name: "a main fuse before the box, one for each behind",
      build: alarm().path("G1.+", "F9", "XJ1", "F1", "A1.1").path("XJ1", "F2", "E2.+"),
    },
    {
      name: "two other loads share a fuse",
      build: alarm()
        .part("load", "E3")
        .path("G1.+", "F1", "A1.1")
        .path("G1.+", "F2", "E2.+")
        .path("F2", "E3.+"),
    },
  ],
  found: [
    {
      name: "a lamp behind the same fuse",
      build: alarm().path("G1.+", "F1", "XJ1", "A1.1").path("XJ1", "E2.+"),
      findings: [
        { at: ["A1.1", "E2.+"], says: "A1.1 constant feed of an alarm shares F1 with E2.+", fix: null },
      ],
    },
    {
      name: "behind a switch, too",
      build: alarm().path("G1.+", "F1", "XJ1", "A1.1").path("XJ1", "S1", "E2.+"),
      findings: [{ at: ["A1.1", "E2.+"], fix: null }],
    },
    {
      name: "a receiver on the vehicle's own fuse",
      build: alarm()
        .vehicle("X1", { "1": "constant-feed fuse:15" })
        .module("A2", { rows: { "1": "constant-feed" } })
        .path("X1.1", "XJ1", "A1.1")
        .path("XJ1", "A2.1"),
      findings: [{ at: ["A1.1", "A2.1"], says: "the 15 A fuse behind X1.1", fix: null }],
    },
  ],
});
