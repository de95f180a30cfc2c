import rule from "../../../src/rules/rules/speakers/line-level-into-speaker-input.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const receiver = () =>
  build().module("A1", {
    role: "receiver",
    rows: {
      "1": "line-rear-left-signal gives",
      "2": "line-rear-left-shield gives",
      "3": "speaker-rear-left-plus",
    },
  });
const factory = { "1": "speaker-rear-left-plus takes", "2": "speaker-rear-left-minus takes" };

testRule(rule, {
  silent: [
    {
      name: "speaker level into the factory amplifier",
      build: receiver()
        .module("A2", { side: "vehicle", role: "amplifier", rows: factory })
        .wire("A1.3", "A2.1"),
    },
    {
      name: "line to line",
      build: receiver()
        .module("A2", { role: "amplifier", rows: { "1": "line-rear-left-signal takes" } })
        .wire("A1.1", "A2.1"),
    },
    {
      name: "a line driver between",
      build: receiver()
        .module("A2", {
          role: "amplifier",
          rows: { "1": "line-rear-left-signal takes", "2": "speaker-rear-left-plus gives" },
        })
        .module("A3", { side: "vehicle", role: "amplifier", rows: factory })
        .wire("A1.1", "A2.1")
        .wire("A2.2", "A3.1"),
    },
  ],
  found: [
    {
      name: "into a factory amplifier that wants speaker level",
      build: receiver()
        .module("A2", { side: "vehicle", role: "amplifier", rows: factory })
        .wire("A1.1", "A2.1")
        .wire("A1.2", "A2.2"),
      findings: [{ at: ["A1.1", "A1.2", "A2.1", "A2.2"], says: "inputs for speaker level", fix: null }],
    },
    {
      name: "into the vehicle's speaker leads, by way of joints",
      build: receiver().vehicle("X3", factory).path("A1.1", "XJ1", "X3.1").path("A1.2", "XJ2", "X3.2"),
      findings: [{ at: ["A1.1", "A1.2", "X3.1", "X3.2"], fix: null }],
    },
    {
      name: "straight onto a speaker",
      build: receiver()
        .part("speaker", "P1", { position: "rear-left" })
        .wire("A1.1", "P1.+")
        .wire("A1.2", "P1.−"),
      findings: [
        {
          at: ["A1.1", "A1.2", "P1.+", "P1.−"],
          severity: "fault",
          says: "Line outputs go into speakers",
          fix: null,
        },
      ],
    },
  ],
});
