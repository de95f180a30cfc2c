import rule from "../../../src/rules/rules/protection/live-stud-bare.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const lamp = (cover: "boot" | "none" | "unknown") =>
  build().part("supply", "G1", { cover }).part("load", "E1").path("E1.−", "XE1", "G1.−");
const block = { method: "terminal-block", cover: "none" } as const;

testRule(rule, {
  silent: [
    { name: "a post with a boot", build: lamp("boot").path("G1.+", "F1", "E1.+") },
    { name: "nobody has said", build: lamp("unknown").path("G1.+", "F1", "E1.+") },
    { name: "a battery that is not wired", build: build().part("supply", "G1", { cover: "none" }) },
    {
      name: "a bare terminal block behind a fuse",
      build: lamp("boot").part("splice", "XJ1", block).path("G1.+", "F1", "XJ1", "E1.+"),
    },
    {
      name: "a bare terminal block on ground",
      build: lamp("boot").part("splice", "XJ1", block).path("G1.+", "F1", "E1.+").path("E1.−", "XJ1"),
    },
    {
      name: "a terminal block that is live with the key only",
      build: build()
        .part("splice", "XJ1", block)
        .vehicle("X1", { "1": "ignition-feed no-fuse" })
        .part("load", "E1")
        .path("X1.1", "XJ1", "E1.+"),
    },
  ],
  found: [
    {
      name: "a bare post",
      build: lamp("none").path("G1.+", "F1", "E1.+"),
      findings: [{ at: ["G1"], says: "G1.+ constant feed is a live post without a boot", fix: null }],
    },
    {
      name: "a bare block before the fuse",
      build: lamp("boot").part("splice", "XJ1", block).path("G1.+", "XJ1", "F1", "E1.+"),
      findings: [{ at: ["XJ1"], fix: null }],
    },
    {
      name: "a bare block behind an isolator",
      build: lamp("boot")
        .part("splice", "XJ1", block)
        .part("switch", "S1", { operatedBy: "isolator" })
        .path("G1.+", "S1", "XJ1", "F1", "E1.+"),
      findings: [{ at: ["XJ1"], fix: null }],
    },
  ],
});
