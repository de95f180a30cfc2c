import rule from "../../../src/rules/rules/speakers/speakers-crossed.ts";
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
      build: across(speakers(2), [
        [1, 1],
        [2, 2],
        [3, 3],
        [4, 4],
      ]),
    },
    {
      name: "left and right exchanged in whole pairs: another rule's",
      build: across(speakers(2), [
        [1, 3],
        [2, 4],
        [3, 1],
        [4, 2],
      ]),
    },
    {
      name: "one pair reversed: another rule's",
      build: across(speakers(2), [
        [1, 2],
        [2, 1],
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
      name: "a subwoofer between two bridged channels of an amplifier",
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
        .part("speaker", "P1", { position: "subwoofer" })
        .wire("A1.1+", "P1.+")
        .wire("A1.2-", "P1.−"),
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
      name: "the negatives of two channels exchanged",
      build: across(speakers(2), [
        [1, 1],
        [2, 4],
        [3, 3],
        [4, 2],
      ]),
      findings: [
        {
          at: ["X3.1", "X3.2", "X3.3", "X3.4"],
          says: "come from two channels",
          fix: "Exchange the two leads at XJ4 and XJ2",
        },
      ],
    },
    {
      name: "the positives of two channels exchanged",
      build: across(speakers(2), [
        [1, 3],
        [2, 2],
        [3, 1],
        [4, 4],
      ]),
      findings: [{ at: ["X3.1", "X3.2", "X3.3", "X3.4"], fix: "Exchange the two leads at XJ3 and XJ1" }],
    },
    {
      name: "one speaker between two channels, the rest open",
      build: across(speakers(2), [
        [1, 1],
        [4, 2],
      ]),
      findings: [{ at: ["X3.1", "X3.2"], fix: null }],
    },
    {
      name: "a speaker part between the outputs of two amplifiers",
      build: build()
        .module("A1", {
          role: "amplifier",
          rows: { "1+": "speaker-front-left-plus", "1-": "speaker-front-left-minus" },
        })
        .module("A2", {
          role: "amplifier",
          rows: { "1+": "speaker-front-left-plus", "1-": "speaker-front-left-minus" },
        })
        .part("speaker", "P1", { position: "front-left" })
        .wire("A1.1+", "P1.+")
        .wire("A2.1-", "P1.−"),
      findings: [{ at: ["P1.+", "P1.−"], says: "A2.1- speaker front left −", fix: null }],
    },
  ],
});
