import rule from "../../../src/rules/rules/feeds/feed-shorted-to-ground.ts";
import { build } from "../../build.ts";
import { feeds, joined } from "../harnesses.ts";
import { testRule } from "../test-rule.ts";

testRule(rule, {
  silent: [
    {
      name: "antenna power on a stud: another rule's",
      build: build().unit("X2", { "5": "antenna-power BU" }).path("X2.5", "XE1"),
    },
    { name: "through a fuse to an input", build: feeds().path("X1.A4", "F1", "X2.1") },
    { name: "each to its own", build: joined() },
    {
      name: "a lamp between them",
      build: build().part("supply", "G1").part("load", "E1").path("G1.+", "F1", "E1.+").path("E1.−", "XE1"),
    },
    { name: "an input on ground", build: feeds().path("X2.1", "XE1") },
  ],
  found: [
    {
      name: "through a fuse",
      build: feeds().path("X1.A4", "F1", "XE1"),
      findings: [
        { at: ["X1.A4", "XE1"], says: "straight to XE1, through F1 and nothing that draws", fix: null },
      ],
    },
    {
      name: "the vehicle's constant in the joint of its ground",
      build: feeds().path("X1.A4", "XJ1", "X1.A8"),
      findings: [
        {
          at: ["X1.A4", "X1.A8"],
          says: "X1.A4 constant feed (red) is joined straight to X1.A8 ground",
          fix: null,
        },
      ],
    },
    {
      name: "amplifier turn-on on a stud",
      build: build().unit("X2", { "5": "amplifier-turn-on BU" }).path("X2.5", "XE1"),
      findings: [{ at: ["X2.5", "XE1"], fix: null }],
    },
  ],
});
