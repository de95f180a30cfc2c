import rule from "../../../src/rules/rules/signals/trigger-core-at-one-end.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

/** A video cable whose third core is W3. */
const video = () =>
  build()
    .vehicle("X1", { "1": "reverse GN" })
    .module("A1", { role: "camera", rows: { "1": "video-signal gives", "2": "video-shield gives" } })
    .module("A2", {
      role: "display",
      rows: { "1": "video-signal takes", "2": "video-shield takes", "3": "camera-trigger takes" },
    })
    .wire("A1.1", "A2.1")
    .wire("A1.2", "A2.2");
const cable = (start: ReturnType<typeof video>) => start.cable("WC1", "shielded", ["W1", "W3"], "W2");

testRule(rule, {
  silent: [
    { name: "joined at both ends", build: cable(video().wire("X1.1", "A2.3", "RD")) },
    { name: "capped at both ends", build: cable(video().path("XC1", "XC2")) },
    {
      name: "joined at the back through a joint",
      build: cable(video().path("XJ1", "A2.3").wire("X1.1", "XJ1")),
    },
    {
      name: "a spare core of a control cable",
      build: video().path("X1.1", "A2.3").path("X1.1", "XC1").cable("WC1", "multicore", ["W3", "W4"]),
    },
    { name: "no extra core", build: video().cable("WC1", "coax", ["W1"], "W2") },
  ],
  found: [
    {
      name: "capped in front",
      build: cable(video().path("X1.1", "XC1")),
      findings: [{ at: ["W3"], says: "is joined at X1.1 and ends in XC1", fix: null }],
    },
    {
      name: "loose behind",
      build: cable(video().wire("A2.3", "loose", "RD")),
      findings: [{ at: ["W3"], says: "W3 (red), the extra core of video cable WC1", fix: null }],
    },
    {
      name: "in a joint that holds nothing else",
      build: cable(video().path("XJ1", "A2.3")),
      findings: [{ at: ["W3"], says: "ends in XJ1", fix: null }],
    },
    {
      name: "in a cavity that a person has left out",
      build: cable(video().vehicle("X9", { "1": "not-used spare" }).wire("X9.1", "A2.3")),
      findings: [{ at: ["W3"], says: "ends in X9.1", fix: null }],
    },
  ],
});
