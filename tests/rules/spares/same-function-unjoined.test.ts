import rule from "../../../src/rules/rules/spares/same-function-unjoined.ts";
import { build } from "../../build.ts";
import { feeds, joined, speakers } from "../harnesses.ts";
import { testRule } from "../test-rule.ts";

const lights = (vehicle = "illumination GY", unit = "illumination OG") =>
  joined({ A6: vehicle }, { "6": unit });

testRule(rule, {
  silent: [
    { name: "joined", build: lights().path("X1.A6", "XJ4", "X2.6") },
    { name: "one side put aside as a spare", build: lights("illumination GY", "illumination OG spare") },
    { name: "one side under a cap", build: lights().path("X2.6", "XC1") },
    { name: "both take", build: lights("illumination takes") },
    { name: "both give", build: lights("illumination", "illumination gives") },
    { name: "a loose end says it itself", build: lights().wire("X2.6", "loose") },
    { name: "two cavities of one box", build: build().unit("X2", { "1": "mute gives", "2": "mute takes" }) },
    {
      name: "nobody knows the function",
      build: build().vehicle("X1", { "1": "unknown" }).unit("X2", { "1": "unknown" }),
    },
    {
      name: "an airbag lead is never offered for joining",
      build: build().vehicle("X1", { "1": "airbag gives" }).unit("X2", { "1": "airbag takes" }),
    },
  ],
  found: [
    {
      name: "illumination on both charts",
      build: lights(),
      findings: [
        {
          at: ["X2.6", "X1.A6"],
          says: "X2.6 illumination (orange) is not joined to X1.A6 illumination (grey)",
          fix: "Join X2.6 to X1.A6",
        },
      ],
    },
    {
      name: "feeds that a unit cannot do without are faults",
      build: feeds().path("X1.A8", "XJ1", "X2.3"),
      findings: [
        { at: ["X2.1", "X1.A4"], severity: "fault", fix: "Join X2.1 to X1.A4" },
        { at: ["X2.2", "X1.A7"], severity: "fault", fix: "Join X2.2 to X1.A7" },
      ],
    },
    {
      name: "both leads of a speaker",
      build: speakers(1),
      findings: [
        { at: ["X3.1", "X4.1"], fix: "Join X3.1 to X4.1" },
        { at: ["X3.2", "X4.2"], fix: "Join X3.2 to X4.2" },
      ],
    },
    {
      name: "two boxes want one lead: both are said, neither is chosen",
      build: build()
        .vehicle("X1", { "5": "speed GN" })
        .module("A1", { rows: { "1": "speed takes" } })
        .module("A2", { rows: { "1": "speed takes" } }),
      findings: [
        { at: ["A1.1", "X1.5"], fix: null },
        { at: ["A2.1", "X1.5"], fix: null },
      ],
    },
    {
      name: "a receiver's turn-on output and the amplifier that waits for it",
      build: build()
        .unit("X2", { "5": "amplifier-turn-on BU/WH" })
        .module("A1", { role: "amplifier", rows: { "1": "amplifier-turn-on takes" } }),
      findings: [{ at: ["A1.1", "X2.5"], fix: "Join A1.1 to X2.5" }],
    },
  ],
});
