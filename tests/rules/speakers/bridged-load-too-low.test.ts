import rule from "../../../src/rules/rules/speakers/bridged-load-too-low.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const rows = {
  "1+": "speaker-front-left-plus gives",
  "1-": "speaker-front-left-minus gives",
  "2+": "speaker-front-right-plus gives",
  "2-": "speaker-front-right-minus gives",
};
const box = (leastLoad_ohm: number | "unknown" = "unknown") =>
  build().module("A1", { role: "amplifier", leastLoad_ohm, rows });
const sub = (start: ReturnType<typeof box>, name: string, impedance_ohm: number | "unknown") =>
  start.part("speaker", name, { position: "subwoofer", type: "woofer", impedance_ohm });
const across = (start: ReturnType<typeof box>) => start.wire("A1.1+", "P1.+").wire("A1.2-", "P1.−");

testRule(rule, {
  silent: [
    { name: "4 Ω between two channels", build: across(sub(box(), "P1", 4)) },
    { name: "2 Ω where the plate allows it", build: across(sub(box(2), "P1", 2)) },
    {
      name: "2 Ω on one channel: another rule's to judge",
      build: sub(box(), "P1", 2).wire("A1.1+", "P1.+").wire("A1.1-", "P1.−"),
    },
    { name: "nobody has said the impedance", build: across(sub(box(4), "P1", "unknown")) },
    {
      name: "two voice coils of 2 Ω in series",
      build: sub(sub(box(4), "P1", 2), "P2", 2)
        .wire("A1.1+", "P1.+")
        .wire("P1.−", "P2.+")
        .wire("P2.−", "A1.2-"),
    },
  ],
  found: [
    {
      name: "2 Ω between two channels of which nothing is said",
      build: across(sub(box(), "P1", 2)),
      findings: [{ at: ["A1.1+", "A1.2-", "P1"], says: "Ω for each of the two channels", fix: null }],
    },
    {
      name: "2 Ω where other channels show that the plate's 2 Ω are for one channel",
      build: across(
        sub(
          build().module("A1", {
            role: "amplifier",
            leastLoad_ohm: 2,
            rows: { ...rows, "3+": "speaker-rear-left-plus gives", "3-": "speaker-rear-left-minus gives" },
          }),
          "P1",
          2,
        ),
      )
        .part("speaker", "P3", { position: "rear-left", impedance_ohm: 4 })
        .wire("A1.3+", "P3.+")
        .wire("A1.3-", "P3.−"),
      findings: [{ at: ["A1.1+", "A1.2-", "P1"], says: "no less than 2 Ω on a channel", fix: null }],
    },
    {
      name: "two of 4 Ω side by side where the plate says 4 Ω",
      build: sub(sub(box(4), "P1", 4), "P2", 4)
        .path("A1.1+", "XJ1", "P1.+")
        .path("A1.2-", "XJ2", "P1.−")
        .wire("XJ1", "P2.+")
        .wire("XJ2", "P2.−"),
      findings: [{ at: ["A1.1+", "A1.2-", "P1", "P2"], says: "no less than 4 Ω", fix: null }],
    },
  ],
});
