import rule from "../../../src/rules/rules/speakers/tweeter-without-capacitor.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const tweeter = (
  role: "amplifier" | "receiver" | "other" = "receiver",
  type: "tweeter" | "full-range" = "tweeter",
) =>
  build()
    .module("A1", {
      role,
      rows: { "1": "speaker-front-left-plus gives", "2": "speaker-front-left-minus gives" },
    })
    .part("speaker", "P1", { position: "front-left", type });

testRule(rule, {
  silent: [
    {
      name: "a capacitor in the plus lead",
      build: tweeter().part("capacitor", "C1").path("A1.1", "C1", "P1.+").wire("A1.2", "P1.−"),
    },
    {
      name: "a capacitor in the minus lead does as well",
      build: tweeter().part("capacitor", "C1").wire("A1.1", "P1.+").path("P1.−", "C1", "A1.2"),
    },
    { name: "a crossover box drives it", build: tweeter("other").wire("A1.1", "P1.+").wire("A1.2", "P1.−") },
    {
      name: "no tweeter",
      build: tweeter("receiver", "full-range").wire("A1.1", "P1.+").wire("A1.2", "P1.−"),
    },
    { name: "half joined", build: tweeter().wire("A1.1", "P1.+") },
  ],
  found: [
    {
      name: "straight on the receiver",
      build: tweeter().wire("A1.1", "P1.+").wire("A1.2", "P1.−"),
      findings: [{ at: ["P1", "A1.1", "A1.2"], says: "P1 is a tweeter", fix: null }],
    },
    {
      name: "through an attenuating resistor and joints",
      build: tweeter("amplifier")
        .part("resistor", "R1", { resistance_ohm: 4 })
        .path("A1.1", "XJ1", "R1", "P1.+")
        .path("A1.2", "XJ2", "P1.−"),
      findings: [{ at: ["P1", "A1.1", "A1.2"], fix: null }],
    },
    {
      name: "beside a woofer, of a unit with no module",
      build: build()
        .unit("X4", { "1": "speaker-front-left-plus", "2": "speaker-front-left-minus" })
        .part("speaker", "P1", { position: "front-left", type: "tweeter" })
        .part("speaker", "P2", { position: "front-left", type: "woofer" })
        .path("X4.1", "XJ1", "P2.+")
        .path("X4.2", "XJ2", "P2.−")
        .wire("XJ1", "P1.+")
        .wire("XJ2", "P1.−"),
      findings: [{ at: ["P1", "X4.1", "X4.2"], fix: null }],
    },
  ],
});
