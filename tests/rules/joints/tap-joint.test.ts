import { feed, lamp } from "../../../src/rules/examples/joints/lamp.ts";
import rule from "../../../src/rules/rules/joints/tap-joint.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const tap = { method: "tap", cover: "housing" } as const;

testRule(rule, {
  silent: [
    { name: "soldered", build: lamp({ method: "solder-and-sleeve", cover: "sleeve" }) },
    { name: "nobody has said", build: lamp({}) },
    { name: "a small signal where the shop allows them", build: lamp(tap).rules({ taps: "signals-only" }) },
    {
      name: "a tap that holds one wire alone",
      build: build().part("splice", "XJ1", tap).vehicle("X1", { "1": "illumination" }).wire("X1.1", "XJ1"),
    },
  ],
  found: [
    { name: "under trim", build: lamp(tap), findings: [{ at: ["XJ1"], says: "FCS 1362", fix: null }] },
    {
      name: "on a constant feed",
      build: feed(tap, 1),
      findings: [{ at: ["XJ1"], severity: "fault", says: "carries a constant feed", fix: null }],
    },
    {
      name: "on a constant feed where signals are allowed",
      build: feed(tap, 1).rules({ taps: "signals-only" }),
      findings: [{ at: ["XJ1"], severity: "fault", fix: null }],
    },
    {
      name: "on a constant feed, behind a fuse",
      build: build()
        .part("supply", "G1")
        .part("splice", "XJ1", tap)
        .part("load", "E1")
        .path("G1.+", "F1", "XJ1", "E1.+")
        .path("E1.−", "XE1"),
      findings: [{ at: ["XJ1"], severity: "fault", fix: null }],
    },
    {
      name: "on a ground",
      build: lamp({})
        .part("splice", "XJ2", tap)
        .vehicle("X3", { "1": "ground" })
        .wire("X3.1", "XJ2")
        .path("XJ2.2", "XE5"),
      findings: [{ at: ["XJ2"], severity: "fault", says: "carries a ground", fix: null }],
    },
    {
      name: "in the engine bay",
      build: lamp({ ...tap, zone: "engine-bay" }).rules({ taps: "signals-only" }),
      findings: [{ at: ["XJ1"], severity: "fault", says: "lies in the engine bay", fix: null }],
    },
    {
      name: "with more than 5 A",
      build: build()
        .vehicle("X1", { "1": "switched-feed RD fuse:10" })
        .unit("X2", { "1": "switched-feed YE 6A" })
        .part("splice", "XJ1", tap)
        .path("X1.1", "XJ1", "X2.1"),
      findings: [{ at: ["XJ1"], severity: "fault", says: "carries 6 A", fix: null }],
    },
  ],
});
