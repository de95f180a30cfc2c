import rule from "../../../src/rules/rules/protection/no-fuse.ts";
import { build } from "../../build.ts";
import { joined } from "../harnesses.ts";
import { testRule } from "../test-rule.ts";

const battery = () =>
  build()
    .part("supply", "G1")
    .module("A1", { rows: { "1": "constant-feed", "2": "ground" } })
    .wire("A1.2", "G1.−");

testRule(rule, {
  silent: [
    { name: "a fuse behind a joint", build: battery().path("G1.+", "XJ1", "F1", "A1.1") },
    { name: "a fuse at the battery", build: battery().path("G1.+", "F1", "A1.1") },
    {
      name: "a switch before the fuse feeds nothing by itself",
      build: battery().path("G1.+", "S1", "F1", "A1.1"),
    },
    { name: "the vehicle's own fuse stands behind its cavity", build: joined() },
    {
      name: "a chart that does not say",
      build: build()
        .vehicle("X1", { A4: "constant-feed" })
        .unit("X2", { "1": "constant-feed" })
        .wire("X1.A4", "X2.1"),
    },
    {
      name: "a pigtail of 178 mm",
      build: battery().wire("G1.+", "A1.1", "RD", { length_m: 0.178 }),
    },
    { name: "a battery that feeds nothing", build: battery() },
    {
      name: "the cable of a starter motor",
      build: battery().part("load", "E1", { type: "motor", function: "starter-signal" }).path("G1.+", "E1.+"),
    },
    { name: "the return to the battery's minus", build: battery().path("G1.+", "F1", "A1.1") },
  ],
  found: [
    {
      name: "a branch that leaves the joint before the fuse",
      build: battery().part("load", "E1").path("G1.+", "XJ1", "F1", "A1.1").path("XJ1", "E1.+"),
      findings: [{ at: ["G1.+", "E1.+"], fix: "Put a fuse into W2 at G1.+" }],
    },
    {
      name: "straight from the battery",
      build: battery().wire("G1.+", "A1.1", "RD"),
      findings: [
        {
          at: ["G1.+", "A1.1"],
          says: "No fuse stands between G1.+ constant feed (red) and A1.1",
          fix: "Put a fuse into W2 at G1.+",
        },
      ],
    },
    {
      name: "a pigtail of 179 mm",
      build: battery().wire("G1.+", "A1.1", "RD", { length_m: 0.179 }),
      findings: [{ at: ["G1.+", "A1.1"], fix: "Put a fuse into W2 at G1.+" }],
    },
    {
      name: "one branch fused, the other not",
      build: battery().path("G1.+", "XJ1", "F1", "A1.1").part("load", "E1").wire("XJ1", "E1.+"),
      findings: [{ at: ["G1.+", "E1.+"], fix: "Put a fuse into W2 at G1.+" }],
    },
    {
      name: "through a relay contact and a switch",
      build: battery()
        .part("relay", "K1", { poles: "make" })
        .part("load", "E1")
        .path("G1.+", "K1.30")
        .path("K1.87", "S1", "E1.+"),
      findings: [{ at: ["G1.+", "E1.+"], fix: "Put a fuse into W2 at G1.+" }],
    },
    {
      name: "a relay coil hangs on it",
      build: battery().part("relay", "K1", { poles: "make" }).wire("G1.+", "K1.86"),
      findings: [{ at: ["G1.+", "K1.86"], fix: "Put a fuse into W2 at G1.+" }],
    },
    {
      name: "a vehicle lead of which the chart says that nothing protects it",
      build: build()
        .vehicle("X1", { "1": "constant-feed no-fuse" })
        .unit("X2", { "1": "constant-feed" })
        .path("X1.1", "XJ1", "X2.1"),
      findings: [{ at: ["X1.1", "X2.1"], fix: "Put a fuse into W1 at X1.1" }],
    },
    {
      name: "a second battery feeds the same lead: one fuse would not do",
      build: battery().part("supply", "G2").wire("G1.+", "A1.1").wire("G2.+", "A1.1"),
      findings: [{ at: ["G1.+", "A1.1"], fix: null }],
    },
    {
      name: "two wires leave the battery: both are said, neither is chosen",
      build: battery().part("load", "E1").wire("G1.+", "A1.1").wire("G1.+", "E1.+"),
      findings: [{ at: ["G1.+", "A1.1", "E1.+"], fix: null }],
    },
  ],
});
