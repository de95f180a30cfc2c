import rule from "../../../src/rules/rules/speakers/front-and-rear-swapped.ts";
import { build } from "../../build.ts";
import { across, speakers } from "../harnesses.ts";
import { testRule } from "../test-rule.ts";

const receiver = () =>
  build().unit("X4", {
    "1": "speaker-rear-left-plus",
    "2": "speaker-rear-left-minus",
    "3": "speaker-front-left-plus",
    "4": "speaker-front-left-minus",
  });

testRule(rule, {
  silent: [
    {
      name: "each channel to its own speaker",
      build: across(speakers(4), [
        [1, 1],
        [2, 2],
        [5, 5],
        [6, 6],
      ]),
    },
    {
      name: "left and right exchanged: another rule's",
      build: across(speakers(2), [
        [1, 3],
        [2, 4],
        [3, 1],
        [4, 2],
      ]),
    },
    {
      name: "a front tweeter on the rear output of its side",
      build: receiver()
        .part("speaker", "P1", { position: "front-left", type: "tweeter" })
        .wire("X4.1", "P1.+")
        .wire("X4.2", "P1.−"),
    },
    {
      name: "a unit for two channels drives front and rear alike",
      build: speakers(2)
        .part("speaker", "P1", { position: "front-left" })
        .part("speaker", "P3", { position: "rear-left" })
        .path("X4.1", "XJ1", "P1.+")
        .path("X4.2", "XJ2", "P1.−")
        .wire("XJ1", "P3.+")
        .wire("XJ2", "P3.−"),
    },
    {
      name: "a subwoofer on a rear output",
      build: receiver()
        .part("speaker", "P1", { position: "subwoofer" })
        .wire("X4.1", "P1.+")
        .wire("X4.2", "P1.−"),
    },
  ],
  found: [
    {
      name: "two speakers drawn as parts",
      build: receiver()
        .part("speaker", "P1", { position: "front-left" })
        .part("speaker", "P2", { position: "rear-left" })
        .wire("X4.1", "P1.+")
        .wire("X4.2", "P1.−")
        .wire("X4.3", "P2.+")
        .wire("X4.4", "P2.−"),
      findings: [
        { at: ["P1.+", "P1.−", "P2.+", "P2.−"], fix: "Exchange the pairs of front left and rear left" },
      ],
    },
    {
      name: "a front speaker that is no tweeter on the rear output",
      build: receiver()
        .part("speaker", "P1", { position: "front-left" })
        .wire("X4.1", "P1.+")
        .wire("X4.2", "P1.−"),
      findings: [{ at: ["P1.+", "P1.−"], says: "rear left output", fix: null }],
    },
    {
      name: "both sides: two pairs of pairs",
      build: across(speakers(4), [
        [1, 5],
        [2, 6],
        [5, 1],
        [6, 2],
        [3, 7],
        [4, 8],
        [7, 3],
        [8, 4],
      ]),
      findings: [
        { at: ["X3.1", "X3.2", "X3.5", "X3.6"], fix: "Exchange the pairs of front left and rear left" },
        { at: ["X3.3", "X3.4", "X3.7", "X3.8"], fix: "Exchange the pairs of front right and rear right" },
      ],
    },
  ],
});
