import rule from "../../../src/rules/rules/speakers/speaker-polarity-swapped.ts";
import { build } from "../../build.ts";
import { across, speakers } from "../harnesses.ts";
import { testRule } from "../test-rule.ts";

testRule(rule, {
  silent: [
    {
      name: "two channels straight",
      build: across(speakers(2), [
        [1, 1],
        [2, 2],
        [3, 3],
        [4, 4],
      ]),
    },
    { name: "one half joined to the wrong lead, the other not yet", build: across(speakers(1), [[1, 2]]) },
    { name: "nothing joined", build: speakers(2) },
    {
      name: "every channel alike: another rule's",
      build: across(speakers(2), [
        [1, 2],
        [2, 1],
        [3, 4],
        [4, 3],
      ]),
    },
  ],
  found: [
    {
      name: "one of two channels",
      build: across(speakers(2), [
        [1, 2],
        [2, 1],
        [3, 3],
        [4, 4],
      ]),
      findings: [
        {
          at: ["X3.1", "X3.2"],
          says: "X3.1 speaker front left + (white) is joined to X4.2 speaker front left −",
          fix: "Exchange the two leads at XJ2 and XJ1",
        },
      ],
    },
    {
      name: "the first of several to be joined",
      build: across(speakers(4), [
        [1, 2],
        [2, 1],
      ]),
      findings: [{ at: ["X3.1", "X3.2"], fix: "Exchange the two leads at XJ2 and XJ1" }],
    },
    {
      name: "wires straight from cavity to cavity",
      build: speakers(2).wire("X4.1", "X3.2").wire("X4.2", "X3.1").wire("X4.3", "X3.3").wire("X4.4", "X3.4"),
      findings: [{ at: ["X3.1", "X3.2"], fix: "Exchange the two leads at X3.1 and X3.2" }],
    },
    {
      name: "a speaker drawn as a part",
      build: build()
        .unit("X4", {
          "1": "speaker-front-left-plus",
          "2": "speaker-front-left-minus",
          "3": "speaker-front-right-plus",
          "4": "speaker-front-right-minus",
        })
        .part("speaker", "P1", { position: "front-left" })
        .part("speaker", "P2", { position: "front-right" })
        .wire("X4.1", "P1.−")
        .wire("X4.2", "P1.+")
        .wire("X4.3", "P2.+")
        .wire("X4.4", "P2.−"),
      findings: [{ at: ["P1.+", "P1.−"], fix: "Exchange the two leads at P1.+ and P1.−" }],
    },
  ],
});
