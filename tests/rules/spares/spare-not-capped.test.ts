import rule from "../../../src/rules/rules/spares/spare-not-capped.ts";
import { build } from "../../build.ts";
import { feeds, joined } from "../harnesses.ts";
import { testRule } from "../test-rule.ts";

const mute = (line: string) => build().unit("X2", { "7": line });

testRule(rule, {
  silent: [
    { name: "a spare under its cap", build: mute("mute PK spare").path("X2.7", "XC1") },
    { name: "a cavity to which the chart gives no lead", build: mute("mute spare") },
    { name: "a cavity closed with a plug", build: mute("mute PK plugged") },
    { name: "leads that wait for each other: told as not joined", build: feeds() },
    {
      name: "a lead a unit cannot do without: told as missing",
      build: build().unit("X2", { "1": "constant-feed YE" }),
    },
    { name: "a loose end that nobody called a spare", build: mute("mute PK").wire("X2.7", "loose") },
    {
      name: "a live spare with a loose end: the danger speaks",
      build: build().vehicle("X1", { A4: "constant-feed RD spare" }).wire("X1.A4", "loose"),
    },
    {
      name: "a lead inside a housing that is plugged in",
      build: build().vehicle("X1", { "5": "speed GN" }).vehicle("X5", { "5": "unknown" }).mate("X1", "X5"),
    },
  ],
  found: [
    {
      name: "a lead that goes nowhere",
      build: mute("mute PK"),
      findings: [{ at: ["X2.7"], says: "X2.7 mute (pink) goes nowhere", fix: "Cap X2.7" }],
    },
    {
      name: "a lead of a vehicle chart that stands at supply voltage",
      build: build().vehicle("X1", { A6: "illumination BU/WH" }),
      findings: [{ at: ["X1.A6"], severity: "fault", fix: "Cap X1.A6" }],
    },
    {
      name: "a spare whose drawn lead ends loose",
      build: mute("mute PK spare").wire("X2.7", "loose"),
      findings: [{ at: ["X2.7"], says: "its lead W1 ends without a cap", fix: "Cap X2.7" }],
    },
    {
      name: "one of two, beside an adapter that is joined",
      build: joined({}, { "7": "mute PK", "8": "steering-key-1 OG spare" }).path("X2.8", "XC1"),
      findings: [{ at: ["X2.7"], fix: "Cap X2.7" }],
    },
    {
      name: "flying leads hang free though their plug is mated",
      build: build()
        .unit("X2", { "7": "mute PK" }, { form: "flying-leads" })
        .unit("X6", { "7": "unknown" })
        .mate("X2", "X6"),
      findings: [{ at: ["X2.7"], fix: "Cap X2.7" }],
    },
  ],
});
