import rule from "../../../src/rules/rules/speakers/speaker-load-too-low.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const rows = {
  "1+": "speaker-front-left-plus gives",
  "1-": "speaker-front-left-minus gives",
  "2+": "speaker-front-right-plus gives",
  "2-": "speaker-front-right-minus gives",
};
const box = (role: "receiver" | "amplifier", leastLoad_ohm: number | "unknown" = "unknown") =>
  build().module("A1", { role, leastLoad_ohm, rows });
type Box = ReturnType<typeof box>;
/** So many speakers side by side on the first channel. */
const beside = (start: Box, impedance_ohm: number | "unknown", count: number): Box => {
  start.path("A1.1+", "XJ1").path("A1.1-", "XJ2");
  for (let index = 1; index <= count; index++)
    start
      .part("speaker", `P${index}`, { position: "front-left", impedance_ohm })
      .wire("XJ1", `P${index}.+`)
      .wire("XJ2", `P${index}.−`);
  return start;
};

testRule(rule, {
  silent: [
    { name: "one speaker of 4 Ω", build: beside(box("receiver"), 4, 1) },
    { name: "two of 8 Ω side by side", build: beside(box("receiver", 4), 8, 2) },
    { name: "two of 4 Ω on an amplifier that bears 2 Ω", build: beside(box("amplifier", 2), 4, 2) },
    { name: "two of 4 Ω on an amplifier of which nothing is said", build: beside(box("amplifier"), 4, 2) },
    { name: "two of which nobody has said the impedance", build: beside(box("receiver", 4), "unknown", 2) },
    {
      name: "two of 4 Ω in series",
      build: box("receiver", 4)
        .part("speaker", "P1", { position: "front-left", impedance_ohm: 4 })
        .part("speaker", "P2", { position: "front-left", impedance_ohm: 4 })
        .wire("A1.1+", "P1.+")
        .wire("P1.−", "P2.+")
        .wire("P2.−", "A1.1-"),
    },
    {
      name: "a tweeter behind its capacitor loads nothing below the treble",
      build: beside(box("receiver", 4), 4, 1)
        .part("speaker", "P9", { position: "front-left", type: "tweeter", impedance_ohm: 4 })
        .part("capacitor", "C1")
        .path("XJ1", "C1", "P9.+")
        .wire("XJ2", "P9.−"),
    },
  ],
  found: [
    {
      name: "two of 4 Ω on a receiver that allows 4 Ω",
      build: beside(box("receiver", 4), 4, 2),
      findings: [
        { at: ["A1.1+", "A1.1-", "P1", "P2"], says: "its sheet allows no less than 4 Ω", fix: null },
      ],
    },
    {
      name: "three of 4 Ω on an amplifier of which nothing is said",
      build: beside(box("amplifier"), 4, 3),
      findings: [{ at: ["A1.1+", "A1.1-", "P1", "P2", "P3"], says: "2 Ω is usual", fix: null }],
    },
    {
      name: "4 Ω beside 8 Ω, of a unit without a module",
      build: build()
        .unit("X4", { "1": "speaker-rear-left-plus", "2": "speaker-rear-left-minus" })
        .part("speaker", "P1", { position: "rear-left", impedance_ohm: 4 })
        .part("speaker", "P2", { position: "rear-left", impedance_ohm: 8 })
        .path("X4.1", "XJ1", "P1.+")
        .path("X4.2", "XJ2", "P1.−")
        .wire("XJ1", "P2.+")
        .wire("XJ2", "P2.−"),
      findings: [{ at: ["X4.1", "X4.2", "P1", "P2"], says: "P1 and P2 load X4.1", fix: null }],
    },
    {
      name: "one speaker of 2 Ω in a 24 V vehicle",
      build: beside(box("receiver", 4).settings({ systemVoltage_V: 24 }), 2, 1),
      findings: [{ at: ["A1.1+", "A1.1-", "P1"], says: "P1 loads", fix: null }],
    },
  ],
});
