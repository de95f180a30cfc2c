import rule from "../../../src/rules/rules/control/illumination-on-steady-feed.ts";
import { joined } from "../harnesses.ts";
import { testRule } from "../test-rule.ts";

const lights = () => joined({ A6: "illumination GY" }, { "6": "illumination OG" });

testRule(rule, {
  silent: [
    { name: "on the vehicle's illumination", build: lights().path("X1.A6", "XJ4", "X2.6") },
    { name: "not joined", build: lights() },
    { name: "capped", build: lights().path("X2.6", "XC1") },
    {
      name: "on the battery through the light switch",
      build: lights()
        .part("supply", "G1")
        .part("switch", "S1", { operatedBy: "lights" })
        .path("G1.+", "F1", "S1", "X2.6"),
    },
    { name: "on constant through a switch that somebody turns", build: lights().path("XJ1", "S1", "X2.6") },
  ],
  found: [
    {
      name: "on the constant lead",
      build: lights().path("XJ1", "X2.6"),
      findings: [{ at: ["X2.6"], says: "fed from X1.A4 constant feed (red), at all times", fix: null }],
    },
    {
      name: "on the switched lead, behind a fuse",
      build: lights().path("XJ2", "F1", "X2.6"),
      findings: [{ at: ["X2.6"], says: "with the key at accessory or run", fix: null }],
    },
  ],
});
