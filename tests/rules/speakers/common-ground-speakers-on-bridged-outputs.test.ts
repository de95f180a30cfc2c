import rule from "../../../src/rules/rules/speakers/common-ground-speakers-on-bridged-outputs.ts";
import { build } from "../../build.ts";
import { across, speakers } from "../harnesses.ts";
import { testRule } from "../test-rule.ts";

const unit = (outputs: "bridged" | "common-negative" | "unknown" = "unknown") =>
  build().module("A1", {
    role: "receiver",
    outputs,
    rows: {
      "1": "speaker-front-left-plus",
      "2": "speaker-front-left-minus",
      "3": "speaker-front-right-plus",
      "4": "speaker-front-right-minus",
    },
  });
/** An old van: two pluses and one minus for both. */
const old = (minus: string, outputs: "bridged" | "common-negative" | "unknown" = "unknown") =>
  unit(outputs).vehicle("X3", {
    "1": "speaker-front-left-plus",
    "2": "speaker-front-right-plus",
    "3": minus,
  });

testRule(rule, {
  silent: [
    {
      name: "a pair to each speaker",
      build: across(speakers(2), [
        [1, 1],
        [2, 2],
        [3, 3],
        [4, 4],
      ]),
    },
    {
      name: "a unit with a common negative",
      build: old("ground", "common-negative").wire("A1.1", "X3.1").wire("A1.3", "X3.2").wire("A1.2", "X3.3"),
    },
    { name: "nothing joined yet", build: old("ground") },
    {
      name: "two speakers side by side on one channel",
      build: unit("bridged")
        .part("speaker", "P1", { position: "front-left" })
        .part("speaker", "P2", { position: "front-left" })
        .path("A1.1", "XJ1", "P1.+")
        .path("A1.2", "XJ2", "P1.−")
        .wire("XJ1", "P2.+")
        .wire("XJ2", "P2.−"),
    },
    {
      name: "two in series on one channel",
      build: unit("bridged")
        .part("speaker", "P1", { position: "front-left" })
        .part("speaker", "P2", { position: "front-left" })
        .wire("A1.1", "P1.+")
        .wire("P1.−", "P2.+")
        .wire("P2.−", "A1.2"),
    },
    {
      name: "negatives of the outputs tied where each speaker has its own: another rule's",
      build: across(speakers(2), [
        [1, 1],
        [2, 2],
        [3, 3],
        [4, 2],
      ]),
    },
  ],
  found: [
    {
      name: "one minus in the vehicle, which is its ground",
      build: old("ground BN")
        .wire("A1.1", "X3.1")
        .wire("A1.3", "X3.2")
        .wire("A1.2", "X3.3")
        .path("A1.4", "XC1"),
      findings: [
        { at: ["X3.1", "X3.2", "A1.2", "A1.4"], says: "no minus lead that belongs to them", fix: null },
      ],
    },
    {
      name: "one minus for two pluses",
      build: old("speaker-front-left-minus")
        .wire("A1.1", "X3.1")
        .wire("A1.3", "X3.2")
        .path("A1.2", "XJ1", "X3.3")
        .wire("A1.4", "XJ1"),
      findings: [{ at: ["X3.2", "A1.4"], says: "belongs to it", fix: null }],
    },
    {
      name: "speakers that come back by the frame",
      build: unit("bridged")
        .part("speaker", "P1", { position: "front-left" })
        .part("speaker", "P2", { position: "front-right" })
        .wire("A1.1", "P1.+")
        .wire("A1.3", "P2.+")
        .path("P1.−", "XE1")
        .path("P2.−", "XE1"),
      findings: [
        { at: ["P1.+", "P1.−", "P2.+", "P2.−", "A1.2", "A1.4"], says: "share one minus lead", fix: null },
      ],
    },
    {
      name: "one channel's minus for both speakers",
      build: unit("bridged")
        .part("speaker", "P1", { position: "front-left" })
        .part("speaker", "P2", { position: "front-right" })
        .wire("A1.1", "P1.+")
        .wire("A1.3", "P2.+")
        .path("A1.2", "XJ1", "P1.−")
        .wire("XJ1", "P2.−"),
      findings: [{ at: ["P1.+", "P1.−", "P2.+", "P2.−", "A1.2", "A1.4"], fix: null }],
    },
  ],
});
