import rule from "../../../src/rules/rules/feeds/forbidden-circuit-tapped.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const van = () =>
  build()
    .vehicle("X1", {
      "1": "wheel-speed",
      "2": "brake-switch",
      "3": "stop-lamp fuse:10",
      "4": "fuel-pump fuse:15",
      "5": "speed",
      "6": "anti-lock-feed",
    })
    .module("A1", { rows: { "1": "speed", "2": "switched-feed", "3": "camera-trigger" } });

testRule(rule, {
  silent: [
    {
      name: "the speed signal and the stop lamp may be read",
      build: van().path("X1.5", "A1.1").path("X1.3", "A1.3"),
    },
    { name: "nothing hangs on them", build: van() },
    {
      name: "the trailer's anti-lock feed on the lead that is made for it",
      build: van().unit("X2", { "1": "anti-lock-feed" }).path("X1.6", "X2.1"),
    },
    {
      name: "from plug to plug of the vehicle",
      build: van().vehicle("X3", { "1": "fuel-pump takes" }).path("X1.4", "XJ1", "X3.1"),
    },
  ],
  found: [
    {
      name: "a speed input on a wheel sensor",
      build: van().path("X1.1", "XJ1", "A1.1"),
      findings: [{ at: ["X1.1", "A1.1"], says: "A1.1 vehicle speed", fix: null }],
    },
    {
      name: "a trigger on the brake pedal's switch",
      build: van().path("X1.2", "A1.3"),
      findings: [{ at: ["X1.2", "A1.3"], fix: null }],
    },
    {
      name: "a feed from the fuel pump, through a fuse",
      build: van().path("X1.4", "XJ1", "F1", "A1.2"),
      findings: [{ at: ["X1.4", "A1.2"], fix: null }],
    },
    {
      name: "a relay's coil on the fuel pump, and a lamp behind its contact",
      build: van().part("relay", "K1", { poles: "make" }).path("X1.4", "K1.86").path("K1.85", "XE1"),
      findings: [{ at: ["X1.4", "K1.86"], fix: null }],
    },
    {
      name: "through a mated plug",
      build: van()
        .unit("X8", { "1": "unknown none", "2": "unknown none", "3": "unknown none", "4": "unknown none" })
        .mate("X1", "X8")
        .part("load", "E1")
        .path("X8.4", "E1.+"),
      findings: [{ at: ["X1.4", "E1.+"], fix: null }],
    },
  ],
});
