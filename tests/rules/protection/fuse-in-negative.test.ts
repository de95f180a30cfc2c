import rule from "../../../src/rules/rules/protection/fuse-in-negative.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const radio = () =>
  build()
    .part("supply", "G1")
    .module("A1", { rows: { "1": "constant-feed", "2": "ground" } })
    .path("G1.+", "F1", "A1.1")
    .path("G1.−", "XE9");
const both = { negativeFuse: "both-at-posts" } as const;

testRule(rule, {
  silent: [
    { name: "the positive only", build: radio().path("A1.2", "XE1") },
    {
      name: "both leads at the battery's posts, where that is the policy",
      build: radio().path("A1.2", "F2", "XE2").change("XE2", { serves: "battery-post" }).rules(both),
    },
    { name: "a fuse that nothing hangs on yet", build: radio().path("A1.2", "XE1").path("F2", "XE1") },
    {
      name: "a fuse in the feed of a load that is switched on its ground side",
      build: radio()
        .part("load", "E1")
        .path("A1.2", "XE1")
        .path("G1.+", "F2", "E1.+")
        .path("E1.−", "S1", "XE1"),
    },
  ],
  found: [
    {
      name: "between a unit and the body",
      build: radio().path("A1.2", "F2", "XE1"),
      findings: [
        {
          at: ["F2", "A1.2"],
          says: "F2 stands in the negative lead of A1.2; fuses belong in the positive only (FCS 1362",
          fix: null,
        },
      ],
    },
    {
      name: "to the battery's post, against the policy",
      build: radio().path("A1.2", "F2", "G1.−"),
      findings: [{ at: ["F2", "A1.2"], fix: null }],
    },
    {
      name: "to the body, where only the posts may have one",
      build: radio().path("A1.2", "F2", "XE1").rules(both),
      findings: [{ at: ["F2", "A1.2"], says: "ends on the body", fix: null }],
    },
    {
      name: "behind a joint that two share, on the vehicle's ground",
      build: build()
        .vehicle("X1", { "1": "ground" })
        .part("load", "E1")
        .part("load", "E2")
        .path("E1.−", "XJ1", "F2", "X1.1")
        .path("E2.−", "XJ1"),
      findings: [{ at: ["F2", "E1.−", "E2.−"], fix: null }],
    },
  ],
});
