import rule from "../../../src/rules/rules/speakers/all-channels-reversed.ts";
import { build } from "../../build.ts";
import { across, speakers } from "../harnesses.ts";
import { testRule } from "../test-rule.ts";

testRule(rule, {
  silent: [
    {
      name: "all straight",
      build: across(speakers(2), [
        [1, 1],
        [2, 2],
        [3, 3],
        [4, 4],
      ]),
    },
    {
      name: "one of two: another rule's",
      build: across(speakers(2), [
        [1, 2],
        [2, 1],
        [3, 3],
        [4, 4],
      ]),
    },
    {
      name: "the first of several to be joined",
      build: across(speakers(4), [
        [1, 2],
        [2, 1],
      ]),
    },
  ],
  found: [
    {
      name: "both channels of a unit",
      build: across(speakers(2), [
        [1, 2],
        [2, 1],
        [3, 4],
        [4, 3],
      ]),
      findings: [
        {
          at: ["X3.1", "X3.2", "X3.3", "X3.4"],
          says: "Every speaker is reversed: front left and front right",
          fix: null,
        },
      ],
    },
    {
      name: "the only channel there is",
      build: across(speakers(1), [
        [1, 2],
        [2, 1],
      ]),
      findings: [{ at: ["X3.1", "X3.2"], fix: null }],
    },
    {
      name: "two speakers drawn as parts, on an amplifier",
      build: build()
        .module("A1", {
          role: "amplifier",
          rows: {
            "1+": "speaker-front-left-plus",
            "1-": "speaker-front-left-minus",
            "2+": "speaker-front-right-plus",
            "2-": "speaker-front-right-minus",
          },
        })
        .part("speaker", "P1", { position: "front-left" })
        .part("speaker", "P2", { position: "front-right" })
        .wire("A1.1+", "P1.−")
        .wire("A1.1-", "P1.+")
        .wire("A1.2+", "P2.−")
        .wire("A1.2-", "P2.+"),
      findings: [{ at: ["P1.+", "P1.−", "P2.+", "P2.−"], fix: null }],
    },
  ],
});
