import rule from "../../../src/rules/rules/grounds/ground-thinner-than-feed.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const unit = (feed_mm2: number, lead = "") =>
  build()
    .vehicle("X1", { "1": "constant-feed RD fuse:15" })
    .unit("X2", { "1": `constant-feed YE ${lead}`, "2": "ground BK", "3": "ground BK" })
    .wire("X1.1", "X2.1", "RD", { area_mm2: feed_mm2 });
const size = (area_mm2: number) => ({ area_mm2 });

testRule(rule, {
  silent: [
    { name: "one size", build: unit(2.5).part("ground", "XE1").wire("X2.2", "XE1", "BK", size(2.5)) },
    { name: "the ground thicker", build: unit(2.5).part("ground", "XE1").wire("X2.2", "XE1", "BK", size(4)) },
    {
      name: "two grounds that are as thick together",
      build: unit(2.5)
        .part("ground", "XE1")
        .wire("X2.2", "XE1", "BK", size(1.5))
        .wire("X2.3", "XE1", "BK", size(1.5)),
    },
    { name: "no size stated", build: unit(2.5).path("X2.2", "XE1") },
    {
      name: "the vehicle's lead is thicker than the unit's own",
      build: unit(0.75, "0.5").part("ground", "XE1").wire("X2.2", "XE1", "BK", size(0.5)),
    },
    {
      name: "14 AWG and 2 mm²",
      build: unit(2.08).part("ground", "XE1").wire("X2.2", "XE1", "BK", size(2)),
    },
    {
      name: "a thin wire to the unit's sense ground only",
      build: unit(2.5)
        .unit("X4", { "1": "sense-ground" })
        .part("ground", "XE1")
        .wire("X2.2", "XE1", "BK", size(2.5))
        .wire("X4.1", "XE1", "BK", size(0.5)),
    },
    {
      name: "thin beyond a joint where others part",
      build: unit(2.5)
        .path("X2.2", "XJ1")
        .change("W2", size(2.5))
        .path("XJ1", "XE1")
        .change("W3", size(1.5))
        .path("XJ1", "XE2")
        .change("W4", size(1.5)),
    },
  ],
  found: [
    {
      name: "half the size",
      build: unit(2.5).part("ground", "XE1").wire("X2.2", "XE1", "BK", size(1)),
      findings: [{ at: ["W2", "X2.1"], says: "2.5 mm²", fix: null }],
    },
    {
      name: "thin beyond a joint and mated couplers",
      build: unit(2.5)
        .unit("X5", { "1": "unknown" })
        .vehicle("X6", { "1": "unknown" })
        .mate("X5", "X6")
        .path("X2.2", "XJ1")
        .path("XJ1", "X5.1")
        .path("X6.1", "XE1")
        .change("W2", size(2.5))
        .change("W3", size(2.5))
        .change("W4", size(0.75)),
      findings: [{ at: ["W4", "X2.1"], fix: null }],
    },
    {
      name: "two thin grounds",
      build: unit(6)
        .part("ground", "XE1")
        .wire("X2.2", "XE1", "BK", size(1.5))
        .wire("X2.3", "XE1", "BK", size(1.5)),
      findings: [{ at: ["W2", "W3", "X2.1"], says: "together 3 mm²", fix: null }],
    },
    {
      name: "a lamp, a module by its own contacts",
      build: build()
        .vehicle("X1", { "1": "constant-feed fuse:15" })
        .part("load", "E1", { type: "lamp" })
        .module("A1", { rows: { "+": "constant-feed", GND: "ground" } })
        .part("ground", "XE1")
        .wire("X1.1", "E1.+", "RD", size(1.5))
        .wire("E1.−", "XE1", "BK", size(0.75))
        .wire("X1.1", "A1.+", "RD", size(10))
        .wire("A1.GND", "XE1", "BK", size(4)),
      findings: [
        { at: ["E1.+", "W2"], fix: null },
        { at: ["A1.+", "W4"], fix: null },
      ],
    },
  ],
});
