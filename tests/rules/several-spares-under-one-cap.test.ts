import rule from "../../src/rules/rules/several-spares-under-one-cap.ts";
import { build } from "../build.ts";
import { testRule } from "./test-rule.ts";

const unit = () =>
  build().unit("X2", {
    "5": "antenna-power BU spare",
    "7": "mute PK spare",
    "8": "unknown spare",
    "9": "unknown spare",
  });

testRule(rule, {
  silent: [
    { name: "a cap for each", build: unit().path("X2.5", "XC1").path("X2.7", "XC2") },
    {
      name: "two leads of one function",
      build: build()
        .unit("X2", { "3": "ground BK", "4": "ground BK" })
        .path("X2.3", "XC1")
        .path("X2.4", "XC1"),
    },
    { name: "a cap without a lead", build: unit().part("cap", "XC1") },
  ],
  found: [
    {
      name: "antenna power with mute",
      build: unit().path("X2.5", "XC1").path("X2.7", "XC1"),
      findings: [
        {
          at: ["XC1"],
          says: "X2.5 antenna power (blue) and X2.7 mute (pink)",
          fix: "Give each of the 2 leads its own cap",
        },
      ],
    },
    {
      name: "two leads of which nobody knows the job",
      build: unit().path("X2.8", "XC1").path("X2.9", "XC1"),
      findings: [{ at: ["XC1"], fix: "Give each of the 2 leads its own cap" }],
    },
    {
      name: "three at once",
      build: unit().path("X2.5", "XC1").path("X2.7", "XC1").path("X2.8", "XC1"),
      findings: [{ at: ["XC1"], fix: "Give each of the 3 leads its own cap" }],
    },
  ],
});
