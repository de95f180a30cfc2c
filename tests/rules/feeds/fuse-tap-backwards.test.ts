import rule from "../../../src/rules/rules/feeds/fuse-tap-backwards.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const box = () =>
  build()
    .part("supply", "G1")
    .part("fuse", "F9", { rating_A: 60, holder: "own" })
    .part("fuse", "F1", { rating_A: 10, holder: "fuse-box" })
    .part("fuse", "F2", { rating_A: 5, holder: "tap" })
    .part("load", "E1")
    .part("load", "E2")
    .path("G1.+", "F9", "XJ1", "F1", "XJ2", "E1.+");

testRule(rule, {
  silent: [
    { name: "both fuses share the hot contact", build: box().path("XJ1", "F2", "E2.+") },
    {
      name: "a fuse of its own behind another",
      build: box().change("F2", { holder: "own" }).path("XJ2", "F2", "E2.+"),
    },
    {
      name: "nobody has said what the fuse sits in",
      build: box().change("F2", { holder: "unknown" }).path("XJ2", "F2", "E2.+"),
    },
    {
      name: "the hot contact of the fuse box is a cavity without a fuse before it",
      build: build()
        .vehicle("X1", { "1": "constant-feed no-fuse" })
        .part("fuse", "F2", { holder: "tap" })
        .part("load", "E1")
        .path("X1.1", "F2", "E1.+"),
    },
  ],
  found: [
    {
      name: "behind the original fuse",
      build: box().path("XJ2", "F2", "E2.+"),
      findings: [{ at: ["F2", "F1"], says: "F2 sits in a fuse tap and is fed through F1 (10 A)", fix: null }],
    },
    {
      name: "behind it, through a plug and a switch, turned round",
      build: box()
        .unit("X1", { "1": "unknown none" })
        .unit("X2", { "1": "unknown none" })
        .mate("X1", "X2")
        .path("XJ2", "S1", "X1.1")
        .wire("X2.1", "F2", null)
        .path("F2", "E2.+"),
      findings: [{ at: ["F2", "F1"], fix: null }],
    },
    {
      name: "on the dead contact of a place that the chart shows fused",
      build: build()
        .vehicle("X1", { "1": "switched-feed fuse:10" })
        .part("fuse", "F2", { holder: "tap" })
        .part("load", "E1")
        .path("X1.1", "F2", "E1.+"),
      findings: [{ at: ["F2", "X1.1"], says: "the 10 A fuse behind X1.1", fix: null }],
    },
  ],
});
