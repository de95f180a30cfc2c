import rule from "../../../src/rules/rules/signals/coax-spliced.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const boxes = () =>
  build()
    .module("A1", { role: "camera", rows: { "1": "video-signal gives", "2": "video-shield gives" } })
    .module("A2", { role: "display", rows: { "1": "video-signal takes", "2": "video-shield takes" } });

testRule(rule, {
  silent: [
    {
      name: "one length",
      build: boxes().wire("A1.1", "A2.1").wire("A1.2", "A2.2").cable("WC1", "coax", ["W1"], "W2"),
    },
    {
      name: "joined by connectors",
      build: boxes()
        .vehicle("X1", { "1": "unknown", "2": "unknown" })
        .vehicle("X2", { "1": "unknown", "2": "unknown" })
        .mate("X1", "X2")
        .wire("A1.1", "X1.1")
        .wire("X2.1", "A2.1")
        .cable("WC1", "coax", ["W1"])
        .cable("WC2", "coax", ["W2"]),
    },
    {
      name: "only the shield in a joint, with its ground",
      build: boxes()
        .wire("A1.1", "A2.1")
        .path("A1.2", "XJ1", "A2.2")
        .path("XJ1", "XE1")
        .cable("WC1", "coax", ["W1"], "W2"),
    },
    {
      name: "a shielded line cable in a joint",
      build: boxes().path("A1.1", "XJ1", "A2.1").cable("WC1", "shielded", ["W1"]),
    },
  ],
  found: [
    {
      name: "two lengths and a crimp",
      build: boxes()
        .part("splice", "XJ1", { method: "crimped-butt" })
        .path("A1.1", "XJ1", "A2.1")
        .wire("A1.2", "A2.2")
        .cable("WC1", "coax", ["W1"], "W3")
        .cable("WC2", "coax", ["W2"]),
      findings: [{ at: ["XJ1"], says: "W1 and W2", fix: null }],
    },
    {
      name: "plain wire spliced on",
      build: boxes().path("A1.1", "XJ1", "A2.1").cable("WC1", "coax", ["W1"]),
      findings: [{ at: ["XJ1"], fix: null }],
    },
    {
      name: "an antenna lead that no cable is drawn for",
      build: build()
        .vehicle("X1", { "1": "antenna-signal gives" })
        .unit("X2", { "1": "antenna-signal takes" })
        .path("X1.1", "XJ1", "X2.1"),
      findings: [{ at: ["XJ1"], fix: null }],
    },
  ],
});
