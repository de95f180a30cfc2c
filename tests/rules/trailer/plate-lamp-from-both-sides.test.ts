import rule from "../../../src/rules/rules/trailer/plate-lamp-from-both-sides.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const rear = () =>
  build()
    .vehicle("X1", { "5": "tail-right fuse:7.5", "7": "tail-left fuse:7.5" })
    .part("load", "E1", { type: "lamp", function: "plate-lamp" });

testRule(rule, {
  silent: [
    { name: "from the left alone", build: rear().wire("X1.7", "E1.+") },
    {
      name: "two lamps, one from each side",
      build: rear()
        .part("load", "E2", { type: "lamp", function: "plate-lamp" })
        .wire("X1.7", "E1.+")
        .wire("X1.5", "E2.+"),
    },
    {
      name: "a diode from each side",
      build: rear()
        .part("diode", "V1")
        .part("diode", "V2")
        .path("X1.7", "V1", "E1.+")
        .path("X1.5", "V2", "E1.+"),
    },
    {
      name: "one lead for all tail lamps",
      build: build()
        .vehicle("X1", { "2": "tail-lamps" })
        .part("load", "E1", { type: "lamp", function: "plate-lamp" })
        .wire("X1.2", "E1.+"),
    },
  ],
  found: [
    {
      name: "both on the lamp",
      build: rear().wire("X1.7", "E1.+").wire("X1.5", "E1.+"),
      findings: [{ at: ["E1.+", "X1.5", "X1.7"], severity: "fault", says: "both sides", fix: null }],
    },
    {
      name: "both through fuses",
      build: rear().path("X1.7", "F1", "E1.+").path("X1.5", "F2", "E1.+"),
      findings: [{ at: ["E1.+", "X1.5", "X1.7"], fix: null }],
    },
    {
      name: "by contacts of a plug, in a joint",
      build: build()
        .unit("X2", { "5": "tail-right", "7": "tail-left", K: "plate-lamp" })
        .path("X2.5", "XJ1", "X2.K")
        .wire("X2.7", "XJ1"),
      findings: [{ at: ["X2.5", "X2.7", "X2.K"], fix: null }],
    },
  ],
});
