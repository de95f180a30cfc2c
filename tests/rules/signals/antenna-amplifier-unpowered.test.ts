import rule from "../../../src/rules/rules/signals/antenna-amplifier-unpowered.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const van = (vehicle = "antenna-power BU", unit = "antenna-power BU") =>
  build().vehicle("X1", { A5: vehicle }).unit("X2", { "5": unit, "6": "switched-feed RD" });

testRule(rule, {
  silent: [
    { name: "fed by the receiver's antenna power", build: van().path("X2.5", "XJ1", "X1.A5") },
    {
      name: "fed by amplifier turn-on",
      build: van("antenna-power BU", "amplifier-turn-on BU").wire("X2.5", "X1.A5"),
    },
    { name: "a person has put the lead aside", build: van("antenna-power BU spare").path("X1.A5", "XC1") },
    { name: "the chart names the cavity, and no lead stands in it", build: van("antenna-power") },
    { name: "no receiver on the drawing", build: build().vehicle("X1", { A5: "antenna-power BU" }) },
    {
      name: "an antenna with an amplifier, fed in accessory",
      build: build()
        .vehicle("X1", { "1": "switched-feed" })
        .part("load", "E1", { type: "antenna", function: "antenna-power" })
        .path("X1.1", "F1", "E1.+"),
    },
  ],
  found: [
    {
      name: "the vehicle's lead is left open",
      build: van(),
      findings: [{ at: ["X1.A5"], says: "X1.A5 antenna power (blue) gets no volts", fix: null }],
    },
    {
      name: "it hangs on the lights",
      build: van().vehicle("X3", { "1": "illumination" }).wire("X3.1", "X1.A5"),
      findings: [{ at: ["X1.A5"], says: "is live only with the lights on", fix: null }],
    },
    {
      name: "an antenna box with a feed of its own",
      build: build().module("A1", {
        side: "vehicle",
        role: "antenna",
        rows: { "1": "switched-feed takes", "2": "antenna-signal gives" },
      }),
      findings: [{ at: ["A1.1"], fix: null }],
    },
    {
      name: "an amplified antenna drawn as a load, the adapter's lead in a dead joint",
      build: van("antenna-power BU spare", "amplifier-turn-on BU")
        .part("load", "E1", { type: "antenna", function: "antenna-power" })
        .path("E1.+", "XJ1"),
      findings: [{ at: ["E1.+"], fix: null }],
    },
  ],
});
