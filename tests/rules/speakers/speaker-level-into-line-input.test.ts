import rule from "../../../src/rules/rules/speakers/speaker-level-into-line-input.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const receiver = () =>
  build().module("A1", {
    role: "receiver",
    rows: { "1": "speaker-front-left-plus", "2": "speaker-front-left-minus", "3": "line-front-left-signal" },
  });
const lineIn = { IN: "line-front-left-signal takes", S: "line-front-left-shield takes" };

testRule(rule, {
  silent: [
    {
      name: "an amplifier's input for speaker level",
      build: receiver()
        .module("A2", {
          role: "amplifier",
          rows: { "1": "speaker-front-left-plus takes", "2": "speaker-front-left-minus takes" },
        })
        .wire("A1.1", "A2.1")
        .wire("A1.2", "A2.2"),
    },
    {
      name: "a converter between",
      build: receiver()
        .module("A2", {
          role: "interface",
          rows: {
            "1": "speaker-front-left-plus takes",
            "2": "speaker-front-left-minus takes",
            "3": "line-front-left-signal gives",
          },
        })
        .module("A3", { role: "amplifier", rows: lineIn })
        .wire("A1.1", "A2.1")
        .wire("A1.2", "A2.2")
        .wire("A2.3", "A3.IN"),
    },
    {
      name: "line to line",
      build: receiver().module("A3", { role: "amplifier", rows: lineIn }).wire("A1.3", "A3.IN"),
    },
    {
      name: "an output of line level on the speaker lead of its own box",
      build: receiver().wire("A1.1", "A1.3"),
    },
  ],
  found: [
    {
      name: "a receiver's pair on a line plug",
      build: receiver()
        .module("A3", { role: "amplifier", rows: lineIn })
        .wire("A1.1", "A3.IN")
        .wire("A1.2", "A3.S"),
      findings: [{ at: ["A1.1", "A1.2", "A3.IN", "A3.S"], says: "go straight into line inputs", fix: null }],
    },
    {
      name: "through a joint and a mated plug, of a factory radio",
      build: build()
        .module("A1", { side: "vehicle", role: "receiver", rows: { "1": "speaker-rear-left-plus gives" } })
        .module("A3", { role: "amplifier" })
        .receptacle("X2", "A3", { "1": "line-rear-left-signal takes" })
        .vehicle("X1", { "1": "unknown" })
        .mate("X1", "X2")
        .path("A1.1", "XJ1", "X1.1"),
      findings: [{ at: ["A1.1", "X2.1"], fix: null }],
    },
    {
      name: "into the auxiliary input, of which the direction is not told",
      build: receiver()
        .module("A3", { role: "amplifier", rows: { "1": "aux-left unknown" } })
        .wire("A1.1", "A3.1"),
      findings: [{ at: ["A1.1", "A3.1"], fix: null }],
    },
  ],
});
