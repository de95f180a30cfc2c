import { feed, lamp } from "../../../src/rules/examples/joints/lamp.ts";
import rule from "../../../src/rules/rules/joints/bullet-on-high-current.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const bullets = { method: "bullet-pair", cover: "housing" } as const;

testRule(rule, {
  silent: [
    { name: "10 A at most", build: feed(bullets, 9.5) },
    { name: "a crimp", build: feed({ method: "crimped-butt" }, 14) },
    { name: "nobody has said what it draws", build: lamp(bullets) },
    {
      name: "much else on the vehicle, little here",
      build: feed(bullets, 2)
        .module("A2", { rows: { "+": "constant-feed 14A", "−": "ground" } })
        .wire("X1.1", "A2.+", "RD", { area_mm2: 4 })
        .wire("A2.−", "X1.2", "BN", { area_mm2: 4 }),
    },
  ],
  found: [
    {
      name: "14 A",
      build: feed(bullets, 14),
      findings: [{ at: ["XJ1"], says: "14 A go through it", fix: null }],
    },
    {
      name: "two wires that carry it together",
      build: feed(bullets, 8)
        .module("A2", { rows: { "+": "constant-feed 8A", "−": "ground" } })
        .wire("XJ1.2", "A2.+", "RD", { area_mm2: 2.5 })
        .wire("A2.−", "X1.2", "BN", { area_mm2: 2.5 }),
      findings: [{ at: ["XJ1"], says: "16 A", fix: null }],
    },
    {
      name: "behind a fuse, 24 V",
      build: build()
        .settings({ systemVoltage_V: 24 })
        .part("supply", "G1", { voltage_V: 24, cover: "boot" })
        .part("fuse", "F1", { rating_A: 20 })
        .part("splice", "XJ1", bullets)
        .part("load", "E1", { type: "heater", current_A: 12 })
        .path("G1.+", "F1", "XJ1", "E1.+")
        .path("E1.−", "XE1")
        .path("G1.−", "XE2"),
      findings: [{ at: ["XJ1"], fix: null }],
    },
  ],
});
