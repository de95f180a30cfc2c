import rule from "../../../src/rules/rules/trailer/trailer-feed-not-isolated.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const coupling = () =>
  build()
    .vehicle("X1", { "9": "constant-feed fuse:20", "10": "ignition-feed fuse:20" }, { shell: "ISO 11446" })
    .part("supply", "G2");

testRule(rule, {
  silent: [
    {
      name: "a charge relay that the ignition closes",
      build: coupling()
        .part("relay", "K1", { poles: "make" })
        .path("X1.9", "F1", "K1.30")
        .path("K1.87", "F2", "G2.+")
        .wire("X1.10", "K1.86")
        .wire("K1.85", "XE1"),
    },
    { name: "a diode", build: coupling().part("diode", "V1").path("X1.9", "F1", "V1", "G2.+") },
    { name: "charged with the key", build: coupling().path("X1.10", "F1", "G2.+") },
    {
      name: "the vehicle's own battery behind its fuse box",
      build: build()
        .vehicle("X1", { "1": "constant-feed fuse:20" })
        .part("supply", "G1")
        .path("G1.+", "F1", "X1.1"),
    },
    {
      name: "a lamp in the trailer on the constant feed",
      build: coupling().part("load", "E1", { type: "lamp", function: "interior-lamp" }).wire("X1.9", "E1.+"),
    },
  ],
  found: [
    {
      name: "a fuse alone",
      build: coupling().path("X1.9", "F1", "G2.+"),
      findings: [{ at: ["G2.+", "X1.9"], says: "nothing but fuses", fix: null }],
    },
    {
      name: "in copper, through a joint",
      build: coupling().path("X1.9", "XJ1", "G2.+"),
      findings: [{ at: ["G2.+", "X1.9"], fix: null }],
    },
    {
      name: "a trailer's battery behind the socket",
      build: build()
        .part("supply", "G1")
        .unit("X2", { "9": "second-battery-feed takes", "13": "ground-constant" }, { shell: "ISO 11446" })
        .path("G1.+", "F1", "X2.9"),
      findings: [{ at: ["G1.+", "X2.9"], fix: null }],
    },
    {
      name: "a charge contact that is live at all times",
      build: build()
        .vehicle("X1", { "1": "constant-feed fuse:30" })
        .unit("X2", { charge: "trailer-charge", ground: "ground" }, { shell: "7-way blade" })
        .path("X1.1", "F1", "X2.charge"),
      findings: [{ at: ["X1.1", "X2.charge"], severity: "weak", fix: null }],
    },
  ],
});
