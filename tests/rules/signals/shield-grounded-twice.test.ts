import rule from "../../../src/rules/rules/signals/shield-grounded-twice.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

/** A picture by a twisted pair in a foil shield, from a camera behind to a display in front. */
const pair = () =>
  build()
    .module("A1", {
      role: "camera",
      rows: { "1": "video-signal gives", "2": "video-shield gives", "3": "shield-drain" },
    })
    .module("A2", {
      role: "display",
      rows: { "1": "video-signal takes", "2": "video-shield takes", "3": "shield-drain" },
    })
    .wire("A1.1", "A2.1")
    .wire("A1.2", "A2.2");

testRule(rule, {
  silent: [
    {
      name: "grounded at the display, capped at the camera",
      build: pair().path("A2.3", "XC1").cable("WC1", "shielded-pair", ["W1", "W2"], "W3"),
    },
    {
      name: "coaxial cable: the shield is the return",
      build: build()
        .module("A1", { role: "camera", rows: { "1": "video-signal gives", "2": "video-shield gives" } })
        .module("A2", { role: "display", rows: { "1": "video-signal takes", "2": "video-shield takes" } })
        .wire("A1.1", "A2.1")
        .wire("A1.2", "A2.2")
        .path("A1.2", "XE1")
        .path("A2.2", "XE2")
        .cable("WC1", "coax", ["W1"], "W2"),
    },
    {
      name: "a stereo line cable with one shield for both cores",
      build: build()
        .module("A1", {
          role: "receiver",
          rows: {
            "1": "line-rear-left-signal",
            "2": "line-rear-right-signal",
            "3": "line-rear-left-shield",
            "4": "audio-ground",
          },
        })
        .module("A2", {
          role: "amplifier",
          rows: {
            "1": "line-rear-left-signal takes",
            "2": "line-rear-right-signal takes",
            "3": "line-rear-left-shield takes",
          },
        })
        .wire("A1.1", "A2.1")
        .wire("A1.2", "A2.2")
        .wire("A1.3", "A2.3")
        .path("A2.3", "XE1")
        .path("A1.3", "XE2")
        .cable("WC1", "shielded", ["W1", "W2"], "W3"),
    },
    {
      name: "two shields that meet on one stud, open at their far ends",
      build: pair()
        .path("XC1", "XE1")
        .path("XC2", "XE1")
        .cable("WC1", "shielded-pair", ["W1", "W2"], "W3")
        .cable("WC2", "shielded-pair", ["W1", "W2"], "W4"),
    },
    {
      name: "a camera whose signal ground is isolated",
      build: pair()
        .change("A1", { signalGround: "isolated" })
        .wire("A1.3", "A2.3")
        .cable("WC1", "shielded-pair", ["W1", "W2"], "W3"),
    },
  ],
  found: [
    {
      name: "on a stud at each end",
      build: pair().path("XE1", "XE2").cable("WC1", "shielded-pair", ["W1", "W2"], "W3"),
      findings: [{ at: ["W3", "XE1", "XE2"], says: "grounded at both ends", fix: null }],
    },
    {
      name: "from drain contact to drain contact, called a shielded cable",
      build: pair().wire("A1.3", "A2.3").cable("WC1", "shielded", ["W1", "W2"], "W3"),
      findings: [{ at: ["W3", "A1.3", "A2.3"], fix: null }],
    },
    {
      name: "two lengths of cable, the shield carried through the joint: one finding",
      build: pair()
        .path("XE1", "XJ1")
        .path("XJ1", "XE2")
        .cable("WC1", "shielded-pair", ["W1", "W2"], "W3")
        .cable("WC2", "shielded-pair", ["W1", "W2"], "W4"),
      findings: [{ at: ["W3", "W4", "XE1", "XE2"], says: "The shield of WC1 and WC2", fix: null }],
    },
    {
      name: "at the battery's minus and at the vehicle's ground",
      build: pair()
        .vehicle("X9", { "1": "ground" })
        .part("supply", "G1")
        .path("X9.1", "G1.−")
        .cable("WC1", "shielded-pair", ["W1", "W2"], "W3"),
      findings: [{ at: ["W3", "X9.1", "G1.−"], fix: null }],
    },
  ],
});
