import rule from "../../../src/rules/rules/protection/fuse-too-small.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const lamp = (current_A: number | "unknown", rating_A: number | "unknown" = 10) =>
  build()
    .part("supply", "G1")
    .part("fuse", "F1", { rating_A })
    .part("load", "E1", { type: "lamp", current_A, behaviour: "constant-current" })
    .path("G1.+", "F1", "E1.+")
    .path("E1.−", "XE1")
    .path("G1.−", "XE2");

testRule(rule, {
  silent: [
    { name: "8 A behind 10 A", build: lamp(8) },
    { name: "no current stated", build: lamp("unknown") },
    { name: "no rating stated", build: lamp(9, "unknown") },
    {
      name: "an amplifier that takes the fuse's rating at full power",
      build: build()
        .part("supply", "G1")
        .part("fuse", "F1", { rating_A: 40 })
        .module("A1", { role: "amplifier", rows: { "1": "constant-feed 40A", "2": "ground" } })
        .path("G1.+", "F1", "A1.1")
        .path("A1.2", "XE1")
        .path("G1.−", "XE2"),
    },
    {
      name: "the shop loads its fuses fully",
      build: lamp(10).rules({ limits: [{ name: "fuseLoad_percent", value: 100 }] }),
    },
    {
      name: "two loads that sit behind fuses of their own",
      build: lamp(7)
        .part("fuse", "F2", { rating_A: 10 })
        .part("load", "E2", { current_A: 7, behaviour: "constant-current" })
        .path("G1.+", "F2", "E2.+")
        .path("E2.−", "XE3"),
    },
  ],
  found: [
    {
      name: "9 A behind 10 A",
      build: lamp(9),
      findings: [{ at: ["F1"], says: "F1 (10 A) carries 9 A for E1", fix: null }],
    },
    {
      name: "12 A behind 10 A",
      build: lamp(12),
      findings: [{ at: ["F1"], says: "more than its rating", fix: null }],
    },
    {
      name: "two loads at a joint, one of them behind a switch",
      build: lamp(5)
        .part("load", "E2", { current_A: 5, behaviour: "constant-current" })
        .path("F1", "S1", "E2.+")
        .path("E2.−", "XE3"),
      findings: [{ at: ["F1"], says: "E1 and E2", fix: null }],
    },
    {
      name: "a main fuse over two smaller ones",
      build: lamp(9, 15)
        .part("fuse", "F9", { rating_A: 20 })
        .part("fuse", "F2", { rating_A: 15 })
        .part("load", "E2", { current_A: 9, behaviour: "constant-current" })
        .change("W1", {
          ends: [
            { part: "p:F9" as never, contact: 2 },
            { part: "p:F1" as never, contact: 1 },
          ],
        })
        .path("G1.+", "F9")
        .path("F9", "F2", "E2.+")
        .path("E2.−", "XE3"),
      findings: [{ at: ["F9"], fix: null }],
    },
  ],
});
