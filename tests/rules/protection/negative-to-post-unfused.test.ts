import rule from "../../../src/rules/rules/protection/negative-to-post-unfused.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const radio = () =>
  build()
    .part("supply", "G1")
    .module("A1", { rows: { "1": "constant-feed", "2": "ground" } })
    .path("G1.+", "F1", "A1.1")
    .path("G1.−", "XE9")
    .rules({ negativeFuse: "both-at-posts" });

testRule(rule, {
  silent: [
    { name: "fused in both leads", build: radio().path("A1.2", "F2", "G1.−") },
    {
      name: "grounded at the body, to which the battery's strap goes too",
      build: radio().path("A1.2", "XE9"),
    },
    { name: "grounded at a stud of its own", build: radio().path("A1.2", "XE1") },
    { name: "the policy is another", build: radio().path("A1.2", "G1.−").rules({ negativeFuse: "never" }) },
  ],
  found: [
    {
      name: "straight to the post",
      build: radio().path("A1.2", "G1.−"),
      findings: [{ at: ["A1.2", "G1.−"], says: "goes straight to the battery's negative post", fix: null }],
    },
    {
      name: "by way of a joint",
      build: radio().path("A1.2", "XJ1", "G1.−"),
      findings: [{ at: ["A1.2", "G1.−"], fix: null }],
    },
    {
      name: "a lamp, to a stud that is the post",
      build: radio()
        .path("A1.2", "F2", "G1.−")
        .part("load", "E1")
        .path("E1.−", "XE2")
        .change("XE2", { serves: "battery-post" }),
      findings: [{ at: ["E1.−", "XE2"], fix: null }],
    },
  ],
});
