import rule from "../../../src/rules/rules/signals/antenna-power-grounded.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const unit = () => build().unit("X2", { "5": "antenna-power BU", "6": "ground BK" });

testRule(rule, {
  silent: [
    {
      name: "to the antenna's amplifier",
      build: unit().vehicle("X1", { A5: "antenna-power" }).wire("X2.5", "X1.A5"),
    },
    { name: "capped", build: unit().path("X2.5", "XC1").path("X2.6", "XE1") },
    {
      name: "through a relay's coil to ground",
      build: unit().part("relay", "K1").wire("X2.5", "K1.86").path("K1.85", "XE1"),
    },
  ],
  found: [
    {
      name: "on the frame",
      build: unit().path("X2.5", "XE1"),
      findings: [{ at: ["X2.5", "XE1"], says: "X2.5 antenna power (blue) is joined to XE1", fix: null }],
    },
    {
      name: "on the antenna's shield, through a joint",
      build: unit().vehicle("X1", { "1": "antenna-ground" }).path("X2.5", "XJ1", "X1.1"),
      findings: [{ at: ["X2.5", "X1.1"], fix: null }],
    },
    {
      name: "on the shell of a line plug",
      build: unit()
        .module("A1", { role: "amplifier", rows: { S: "line-rear-left-shield takes" } })
        .wire("X2.5", "A1.S"),
      findings: [{ at: ["X2.5", "A1.S"], fix: null }],
    },
    {
      name: "through a fuse",
      build: unit().path("X2.5", "F1", "XE1"),
      findings: [{ at: ["X2.5", "XE1"], fix: null }],
    },
  ],
});
