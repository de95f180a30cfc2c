import rule from "../../../src/rules/rules/speakers/speaker-on-input.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const amplifier = () =>
  build()
    .module("A2", {
      role: "amplifier",
      rows: {
        "1": "speaker-rear-left-plus takes",
        "2": "speaker-rear-left-minus takes",
        "3": "speaker-rear-left-plus gives",
        "4": "speaker-rear-left-minus gives",
        "5": "line-rear-left-signal takes",
        "6": "line-rear-left-shield takes",
      },
    })
    .part("speaker", "P1", { position: "rear-left" });

testRule(rule, {
  silent: [
    { name: "on the outputs", build: amplifier().wire("A2.3", "P1.+").wire("A2.4", "P1.−") },
    {
      name: "an input that listens to a receiver's speaker",
      build: amplifier()
        .unit("X4", { "1": "speaker-rear-left-plus", "2": "speaker-rear-left-minus" })
        .path("X4.1", "XJ1", "P1.+")
        .path("X4.2", "XJ2", "P1.−")
        .wire("XJ1", "A2.1")
        .wire("XJ2", "A2.2"),
    },
    { name: "joined to nothing", build: amplifier() },
    {
      name: "the vehicle's leads on an input: what drives them is not drawn",
      build: amplifier()
        .vehicle("X3", { "1": "speaker-rear-left-plus", "2": "speaker-rear-left-minus" })
        .wire("X3.1", "A2.1")
        .wire("X3.2", "A2.2"),
    },
  ],
  found: [
    {
      name: "on the inputs for speaker level",
      build: amplifier().wire("A2.1", "P1.+").wire("A2.2", "P1.−"),
      findings: [{ at: ["P1.+", "P1.−", "A2.1", "A2.2"], says: "P1 hangs on inputs", fix: null }],
    },
    {
      name: "on the line inputs, through joints",
      build: amplifier().path("A2.5", "XJ1", "P1.+").path("A2.6", "XJ2", "P1.−"),
      findings: [{ at: ["P1.+", "P1.−", "A2.5", "A2.6"], fix: null }],
    },
    {
      name: "on the line inputs, beside the receiver's line outputs",
      build: amplifier()
        .module("A1", {
          role: "receiver",
          rows: { "1": "line-rear-left-signal gives", "2": "line-rear-left-shield gives" },
        })
        .path("A1.1", "XJ1", "A2.5")
        .path("A1.2", "XJ2", "A2.6")
        .wire("XJ1", "P1.+")
        .wire("XJ2", "P1.−"),
      findings: [{ at: ["P1.+", "P1.−", "A2.5", "A2.6"], fix: null }],
    },
    {
      name: "inputs in a receptacle, a speaker of no stated place",
      build: build()
        .module("A1", { role: "amplifier" })
        .receptacle("X1", "A1", {
          "1": "speaker-front-left-plus takes",
          "2": "speaker-front-left-minus takes",
        })
        .part("speaker", "P1", { position: "other" })
        .wire("X1.1", "P1.+")
        .wire("X1.2", "P1.−"),
      findings: [{ at: ["P1.+", "P1.−", "X1.1", "X1.2"], fix: null }],
    },
  ],
});
