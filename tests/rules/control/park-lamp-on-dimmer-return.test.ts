import rule from "../../../src/rules/rules/control/park-lamp-on-dimmer-return.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const dash = () =>
  build().vehicle("X1", {
    "1": "illumination GY/RD fuse:5",
    "2": "dimmer-return GY/BN",
    "3": "tail-lamps GY fuse:5",
  });

testRule(rule, {
  silent: [
    { name: "nothing is joined", build: dash() },
    {
      name: "a lamp between the two",
      build: dash()
        .part("load", "E1", { type: "lamp", function: "illumination" })
        .wire("X1.1", "E1.+")
        .wire("E1.−", "X1.2"),
    },
    {
      name: "a unit on the feed, the return of its own lamps on the dimmer",
      build: dash()
        .unit("X2", { "1": "illumination", "2": "dimmer-return takes" })
        .wire("X1.1", "X2.1")
        .wire("X1.2", "X2.2"),
    },
    {
      name: "a resistor of 10 kΩ between them",
      build: dash().part("resistor", "R1", { resistance_ohm: 10000 }).path("X1.1", "R1", "X1.2"),
    },
    { name: "two feeds tied", build: dash().wire("X1.1", "X1.3") },
    { name: "capped together with nothing", build: dash().path("X1.1", "XC1").path("X1.2", "XC2") },
  ],
  found: [
    {
      name: "tied straight",
      build: dash().wire("X1.1", "X1.2"),
      findings: [
        {
          at: ["X1.1", "X1.2"],
          says: "X1.1 illumination (grey with a red tracer) is tied to X1.2 dimmer return",
          fix: null,
        },
      ],
    },
    {
      name: "in the joint of a screen's lead",
      build: dash().unit("X2", { "4": "illumination" }).path("X1.1", "XJ1", "X2.4").path("X1.2", "XJ1"),
      findings: [{ at: ["X1.1", "X1.2"], fix: null }],
    },
    {
      name: "through a fuse, from two feeds",
      build: dash().path("X1.1", "XJ1", "F1", "X1.2").path("X1.3", "XJ1"),
      findings: [{ at: ["X1.1", "X1.2", "X1.3"], says: "are tied to", fix: null }],
    },
    {
      name: "under one cap",
      build: dash().path("X1.1", "XC1").path("X1.2", "XC1"),
      findings: [{ at: ["X1.1", "X1.2"], fix: null }],
    },
  ],
});
