import rule from "../../../src/rules/rules/speakers/unused-speaker-leads-together.ts";
import { build } from "../../build.ts";
import { speakers } from "../harnesses.ts";
import { testRule } from "../test-rule.ts";

const spare = (outputs: "bridged" | "common-negative" = "bridged") =>
  build().module("A1", {
    role: "receiver",
    outputs,
    rows: {
      "1": "speaker-rear-left-plus spare",
      "2": "speaker-rear-left-minus spare",
      "4": "speaker-rear-right-minus spare",
    },
  });

testRule(rule, {
  silent: [
    { name: "each capped alone", build: spare().path("A1.1", "XC1").path("A1.2", "XC2").path("A1.4", "XC3") },
    {
      name: "a speaker between",
      build: spare()
        .part("speaker", "P1", { position: "rear-left" })
        .wire("A1.1", "P1.+")
        .wire("A1.2", "P1.−"),
    },
    { name: "each loose: another rule's", build: spare().wire("A1.1", "loose").wire("A1.2", "loose") },
    {
      name: "negatives that are one inside",
      build: spare("common-negative").path("A1.2", "XC1").path("A1.4", "XC1"),
    },
    {
      name: "one lead in two cavities",
      build: build()
        .unit("X4", { "1": "speaker-rear-left-plus spare", "9": "speaker-rear-left-plus spare" })
        .path("X4.1", "XJ1", "XC1")
        .wire("X4.9", "XJ1"),
    },
    { name: "a negative on the frame: another rule's", build: spare().path("A1.2", "XE1") },
  ],
  found: [
    {
      name: "a pair under one cap",
      build: spare().path("A1.1", "XC1").path("A1.2", "XC1"),
      findings: [{ at: ["A1.1", "A1.2", "XC1"], says: "together under XC1", fix: null }],
    },
    {
      name: "joined before they reach the cap",
      build: spare().path("A1.1", "XJ1", "XC1").wire("A1.2", "XJ1"),
      findings: [{ at: ["A1.1", "A1.2", "XC1"], fix: null }],
    },
    {
      name: "twisted together, one end loose",
      build: speakers(1).path("X4.1", "XJ1").wire("X4.2", "XJ1").wire("XJ1", "loose"),
      findings: [{ at: ["X4.1", "X4.2"], fix: null }],
    },
    {
      name: "leads of two channels under one cap",
      build: spare().path("A1.1", "XC1").path("A1.4", "XC1"),
      findings: [{ at: ["A1.1", "A1.4", "XC1"], fix: null }],
    },
  ],
});
