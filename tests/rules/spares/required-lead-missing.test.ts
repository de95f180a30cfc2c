import rule from "../../../src/rules/rules/spares/required-lead-missing.ts";
import { build } from "../../build.ts";
import { feeds, joined, speakers } from "../harnesses.ts";
import { testRule } from "../test-rule.ts";

const unit = (line: string) =>
  build()
    .vehicle("X1", { A8: "ground BN" })
    .unit("X2", { "1": line, "3": "ground BK" })
    .wire("X1.A8", "X2.3");

testRule(rule, {
  silent: [
    { name: "all joined", build: joined() },
    { name: "the vehicle's lead waits for it: told as not joined", build: feeds() },
    { name: "a lead that the chart calls optional", build: unit("switched-feed RD optional") },
    { name: "a lead put aside as a spare", build: unit("switched-feed RD spare").path("X2.1", "XC1") },
    { name: "a loose end says it itself", build: unit("constant-feed YE").wire("X2.1", "loose") },
    { name: "an input of the vehicle", build: build().vehicle("X1", { A4: "constant-feed takes" }) },
    {
      name: "an amplifier that wakes by its signal",
      build: build().module("A1", { wakes: "by-signal", rows: { "1": "amplifier-turn-on takes" } }),
    },
    { name: "neither half of a pair in use", build: speakers(1) },
  ],
  found: [
    {
      name: "the vehicle has an ignition lead where the unit wants a switched one",
      build: build()
        .vehicle("X1", { "1": "ignition-feed BK", A8: "ground BN" })
        .unit("X2", { "1": "switched-feed RD", "3": "ground BK" })
        .wire("X1.A8", "X2.3"),
      findings: [{ at: ["X2.1"], fix: null }],
    },
    {
      name: "a feed that no chart gives",
      build: unit("constant-feed YE"),
      findings: [{ at: ["X2.1"], says: "X2.1 constant feed (yellow) is joined to nothing", fix: null }],
    },
    {
      name: "a feed under a cap",
      build: unit("constant-feed YE").path("X2.1", "XC1"),
      findings: [{ at: ["X2.1"], fix: null }],
    },
    {
      name: "a second box, whose feed the first box has taken",
      build: unit("constant-feed YE")
        .vehicle("X5", { A4: "constant-feed RD fuse:10" })
        .wire("X5.A4", "X2.1")
        .module("A1", { rows: { "1": "constant-feed", "2": "ground" } })
        .wire("A1.2", "X1.A8"),
      findings: [{ at: ["A1.1"], fix: null }],
    },
    {
      name: "half a speaker pair",
      build: speakers(1).wire("X4.1", "X3.1").path("X4.2", "XC1"),
      findings: [
        { at: ["X3.2"], says: "the other half of its pair is", fix: null },
        { at: ["X4.2"], fix: null },
      ],
    },
    {
      name: "half a data pair",
      build: build()
        .vehicle("X1", { "1": "can-high", "2": "can-low spare" })
        .module("A1", { rows: { "6": "can-high", "14": "can-low" } })
        .wire("X1.1", "A1.6"),
      findings: [{ at: ["A1.14"], fix: null }],
    },
    {
      name: "an amplifier that wakes by its lead",
      build: build().module("A1", { wakes: "by-lead", rows: { "1": "amplifier-turn-on takes" } }),
      findings: [{ at: ["A1.1"], fix: null }],
    },
  ],
});
