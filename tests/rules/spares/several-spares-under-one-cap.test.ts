import rule from "../../../src/rules/rules/spares/several-spares-under-one-cap.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const unit = () =>
  build().unit("X2", {
    "5": "antenna-power BU spare",
    "7": "mute PK spare",
    "8": "unknown spare",
    "9": "unknown spare",
  });

testRule(rule, {
  silent: [
    {
      name: "a speaker's two leads, a cap for each",
      build: build()
        .unit("X4", { "1": "speaker-rear-left-plus GN spare", "2": "speaker-rear-left-minus GN/BK spare" })
        .path("X4.1", "XC1")
        .path("X4.2", "XC2"),
    },
    {
      name: "a lead in use, of which a tail is capped",
      build: build()
        .vehicle("X1", { "1": "mute" })
        .unit("X2", { "1": "mute" })
        .path("X1.1", "XJ1", "X2.1")
        .path("XJ1", "XC1"),
    },
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
      name: "two spares in a joint, and one cap behind it",
      build: unit().path("X2.5", "XJ1").path("X2.7", "XJ1").path("XJ1", "XC1"),
      findings: [{ at: ["XC1"], says: "Spares are joined together before they reach XC1", fix: null }],
    },
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
