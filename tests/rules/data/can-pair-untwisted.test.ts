import rule from "../../../src/rules/rules/data/can-pair-untwisted.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const pair = (high_m: number | "unknown", low_m: number | "unknown" = high_m) =>
  build()
    .vehicle("X1", { "3": "can-high OG/GN", "4": "can-low OG/BN" })
    .unit("X2", { "3": "can-high OG", "4": "can-low BN" })
    .wire("X1.3", "X2.3", "OG", { length_m: high_m })
    .wire("X1.4", "X2.4", "BN", { length_m: low_m });

testRule(rule, {
  silent: [
    { name: "one twisted pair", build: pair(0.6).cable("WC1", "twisted-pair", ["W1", "W2"]) },
    { name: "a shielded pair", build: pair(2).cable("WC1", "shielded-pair", ["W1", "W2"]) },
    { name: "short enough without", build: pair(0.08) },
    { name: "no length stated", build: pair("unknown") },
    {
      name: "90 mm between two lengths",
      build: pair(0.6, 0.69).cable("WC1", "twisted-pair", ["W1", "W2"]),
    },
    {
      name: "twisted but for the last 60 mm at the joints",
      build: build()
        .vehicle("X1", { "3": "can-high", "4": "can-low" })
        .unit("X2", { "3": "can-high", "4": "can-low" })
        .wire("X1.3", "XJ1", null, { length_m: 0.06 })
        .wire("X1.4", "XJ2", null, { length_m: 0.06 })
        .wire("XJ1", "X2.3", null, { length_m: 1 })
        .wire("XJ2", "X2.4", null, { length_m: 1 })
        .cable("WC1", "twisted-pair", ["W3", "W4"]),
    },
  ],
  found: [
    {
      name: "two plain wires",
      build: pair(0.6),
      findings: [{ at: ["W1", "W2"], says: "600 mm", fix: null }],
    },
    {
      name: "a cable of several cores is no twist",
      build: pair(0.6).cable("WC1", "multicore", ["W1", "W2"]),
      findings: [{ at: ["W1", "W2"], fix: null }],
    },
    {
      name: "each twisted with a stranger",
      build: pair(0.6)
        .wire("loose", "loose", "GY", { length_m: 0.6 })
        .cable("WC1", "twisted-pair", ["W1", "W3"]),
      findings: [{ at: ["W1", "W2"], fix: null }],
    },
    {
      name: "the shop allows 40 mm",
      build: pair(0.08).rules({
        limits: [{ name: "untwisted_mm", value: 40 }],
        shop: "Thistledown workshop",
      }),
      findings: [{ at: ["W1", "W2"], says: "the limit of Thistledown workshop", fix: null }],
    },
    {
      name: "one lead 120 mm longer",
      build: pair(0.6, 0.72).cable("WC1", "twisted-pair", ["W1", "W2"]),
      findings: [{ at: ["X2.3", "X2.4"], says: "120 mm", fix: null }],
    },
    {
      name: "one lead by another run",
      build: pair(0.6)
        .cable("WC1", "twisted-pair", ["W1", "W2"])
        .run("B1", { length_m: 0.6 }, ["W1"])
        .run("B2", { length_m: 0.6 }, ["W2"]),
      findings: [{ at: ["W1", "W2"], says: "different runs", fix: null }],
    },
    {
      name: "two short pieces make a long one",
      build: build()
        .vehicle("X1", { "3": "can-high", "4": "can-low" })
        .unit("X2", { "3": "can-high", "4": "can-low" })
        .wire("X1.3", "XJ1", null, { length_m: 0.08 })
        .wire("XJ1", "X2.3", null, { length_m: 0.08 })
        .wire("X1.4", "XJ2", null, { length_m: 0.08 })
        .wire("XJ2", "X2.4", null, { length_m: 0.08 }),
      findings: [{ at: ["W1", "W2", "W3", "W4"], says: "160 mm", fix: null }],
    },
  ],
});
