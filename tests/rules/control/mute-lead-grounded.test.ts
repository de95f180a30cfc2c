import rule from "../../../src/rules/rules/control/mute-lead-grounded.ts";
import { build } from "../../build.ts";
import { joined } from "../harnesses.ts";
import { testRule } from "../test-rule.ts";

const receiver = (line = "mute BN 0.5") => build().unit("X2", { "2": line });

testRule(rule, {
  silent: [
    { name: "capped", build: receiver().path("X2.2", "XC1") },
    {
      name: "pulled by a telephone kit",
      build: receiver().vehicle("X1", { "1": "mute gives YE" }).wire("X1.1", "X2.2"),
    },
    {
      name: "through a switch that a hand works",
      build: receiver().part("switch", "S1", { operatedBy: "hand" }).path("X2.2", "S1", "XE1"),
    },
    {
      name: "through a relay that pulls with the lights",
      build: receiver()
        .vehicle("X1", { "1": "illumination GY fuse:5" })
        .part("relay", "K1", { poles: "changeover" })
        .path("X2.2", "K1.87")
        .path("K1.30", "XE1")
        .path("X1.1", "K1.86")
        .path("K1.85", "XE2"),
    },
    { name: "one that volts mute", build: receiver("mute BN acts-on-volts").path("X2.2", "XE1") },
    { name: "one that gives, on a stud", build: receiver("mute BN gives").path("X2.2", "XE1") },
    { name: "a person has left it out", build: receiver("mute BN plugged").path("X2.2", "XE1") },
  ],
  found: [
    {
      name: "on a stud",
      build: receiver().path("X2.2", "XE1"),
      findings: [{ at: ["X2.2"], says: "X2.2 mute (brown) lies on ground for good, at XE1", fix: null }],
    },
    {
      name: "in the joint of the unit's ground",
      build: joined({}, { "9": "mute BN" }).path("X2.9", "XJ3"),
      findings: [{ at: ["X2.9"], says: "X1.A8 ground", fix: null }],
    },
    {
      name: "through mated couplers to the battery's minus",
      build: receiver()
        .part("supply", "G1")
        .vehicle("X5", { "1": "unknown" })
        .unit("X6", { "1": "unknown" })
        .mate("X5", "X6")
        .wire("X2.2", "X6.1")
        .wire("X5.1", "G1.−"),
      findings: [{ at: ["X2.2"], fix: null }],
    },
    {
      name: "through the rest contact of a relay",
      build: receiver()
        .vehicle("X1", { "1": "reverse RD fuse:10" })
        .part("relay", "K1", { poles: "changeover" })
        .path("X2.2", "K1.87a")
        .path("K1.30", "XE1")
        .path("X1.1", "K1.86")
        .path("K1.85", "XE2"),
      findings: [{ at: ["X2.2"], fix: null }],
    },
  ],
});
