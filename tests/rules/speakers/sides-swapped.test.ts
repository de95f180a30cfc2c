import rule from "../../../src/rules/rules/speakers/sides-swapped.ts";
import { build } from "../../build.ts";
import { across, speakers } from "../harnesses.ts";
import { testRule } from "../test-rule.ts";

const mono = () =>
  build()
    .unit("X4", { "1": "speaker-front-left-plus", "2": "speaker-front-left-minus" })
    .part("speaker", "P1", { position: "front-left" })
    .part("speaker", "P2", { position: "front-right" });

testRule(rule, {
  silent: [
    {
      name: "each channel to its own speaker",
      build: across(speakers(2), [
        [1, 1],
        [2, 2],
        [3, 3],
        [4, 4],
      ]),
    },
    {
      name: "front and rear exchanged: another rule's",
      build: across(speakers(4), [
        [1, 5],
        [2, 6],
        [5, 1],
        [6, 2],
      ]),
    },
    {
      name: "a single lead exchanged: another rule's",
      build: across(speakers(2), [
        [1, 1],
        [2, 4],
        [3, 3],
        [4, 2],
      ]),
    },
    {
      name: "a unit of one channel drives both sides",
      build: mono()
        .path("X4.1", "XJ1", "P1.+")
        .path("X4.2", "XJ2", "P1.−")
        .wire("XJ1", "P2.+")
        .wire("XJ2", "P2.−"),
    },
    {
      name: "a subwoofer on a left output",
      build: speakers(2)
        .part("speaker", "P1", { position: "subwoofer" })
        .wire("X4.1", "P1.+")
        .wire("X4.2", "P1.−"),
    },
  ],
  found: [
    {
      name: "left and right exchanged, whole pairs",
      build: across(speakers(2), [
        [1, 3],
        [2, 4],
        [3, 1],
        [4, 2],
      ]),
      findings: [
        {
          at: ["X3.1", "X3.2", "X3.3", "X3.4"],
          says: "The pairs of front left and front right are exchanged",
          fix: "Exchange the pairs of front left and front right",
        },
      ],
    },
    {
      name: "corner to corner",
      build: across(speakers(4), [
        [1, 7],
        [2, 8],
        [7, 1],
        [8, 2],
      ]),
      findings: [
        { at: ["X3.1", "X3.2", "X3.7", "X3.8"], fix: "Exchange the pairs of front left and rear right" },
      ],
    },
    {
      name: "two speakers of an amplifier, reversed as well",
      build: build()
        .module("A1", {
          role: "amplifier",
          rows: {
            "1+": "speaker-rear-left-plus",
            "1-": "speaker-rear-left-minus",
            "2+": "speaker-rear-right-plus",
            "2-": "speaker-rear-right-minus",
          },
        })
        .part("speaker", "P1", { position: "rear-left" })
        .wire("A1.2+", "P1.+")
        .wire("A1.2-", "P1.−"),
      findings: [{ at: ["P1.+", "P1.−"], says: "rear right output", fix: null }],
    },
  ],
});
