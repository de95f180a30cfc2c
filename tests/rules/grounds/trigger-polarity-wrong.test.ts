import rule from "../../../src/rules/rules/grounds/trigger-polarity-wrong.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const display = (line: string) =>
  build()
    .vehicle("X1", {
      "1": "reverse GN fuse:10",
      "2": "door-switch BN",
      "3": "dimmer-return GY",
      "4": "constant-feed RD fuse:5",
      "5": "parking-brake WH",
    })
    .unit("X2", { "9": line });
const relay = (line: string) =>
  display(line).part("relay", "K1", { poles: "make" }).path("X1.1", "K1.86").path("K1.85", "XE1");

testRule(rule, {
  silent: [
    { name: "volts for one that wants volts", build: display("camera-trigger").wire("X1.1", "X2.9") },
    {
      name: "ground for one that wants ground",
      build: display("camera-trigger acts-on-ground").wire("X1.2", "X2.9"),
    },
    { name: "door contact to a door input", build: display("door-switch").wire("X1.2", "X2.9") },
    {
      name: "turned about by a relay",
      build: relay("camera-trigger acts-on-ground").path("K1.30", "XE2").path("K1.87", "X2.9"),
    },
    { name: "an unused trigger laid on ground", build: display("camera-trigger").path("X2.9", "XE1") },
    {
      name: "illumination on the dimmer's lead, which has its own rule",
      build: display("illumination").wire("X1.3", "X2.9"),
    },
    {
      name: "parking brake on 12 V, which has its own rule",
      build: display("parking-brake").wire("X1.4", "X2.9"),
    },
    {
      name: "a resistor that lifts the lead, and the contact that pulls it",
      build: display("door-switch")
        .part("resistor", "R1", { resistance_ohm: 470 })
        .path("X1.4", "R1", "X2.9")
        .wire("X1.2", "X2.9"),
    },
    { name: "a lead of which nobody can say", build: display("speed").wire("X1.1", "X2.9") },
    { name: "a person has left it out", build: display("door-switch spare").wire("X1.4", "X2.9") },
  ],
  found: [
    {
      name: "volts where the chart asks for ground",
      build: display("camera-trigger acts-on-ground").wire("X1.1", "X2.9"),
      findings: [
        { at: ["X2.9"], says: "acts when it is grounded, and gets volts: X1.1 reverse (green)", fix: null },
      ],
    },
    {
      name: "a door input fed through a hand's switch, and a joint",
      build: display("door-switch").part("switch", "S1").path("X1.4", "S1", "XJ1", "X2.9"),
      findings: [{ at: ["X2.9"], fix: null }],
    },
    {
      name: "mute fed by a kit that gives volts",
      build: display("mute")
        .module("A1", { rows: { M: "enable gives" } })
        .wire("A1.M", "X2.9"),
      findings: [{ at: ["X2.9"], fix: null }],
    },
    {
      name: "ground where the chart asks for volts",
      build: display("illumination acts-on-volts").wire("X1.2", "X2.9"),
      findings: [{ at: ["X2.9"], says: "pulled to ground: by X1.2 door switch (brown)", fix: null }],
    },
    {
      name: "a switch to the frame, through mated couplers",
      build: display("camera-trigger")
        .unit("X5", { "1": "unknown" })
        .vehicle("X6", { "1": "unknown" })
        .mate("X5", "X6")
        .part("switch", "S1", { operatedBy: "hand" })
        .wire("X2.9", "X5.1")
        .path("X6.1", "S1", "XE1"),
      findings: [{ at: ["X2.9"], says: "a switch or relay joins it to XE1", fix: null }],
    },
    {
      name: "parking brake that wants volts on the vehicle's switch",
      build: display("parking-brake acts-on-volts").wire("X1.5", "X2.9"),
      findings: [{ at: ["X2.9"], says: "acts on volts", fix: null }],
    },
  ],
});
