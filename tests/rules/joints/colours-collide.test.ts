import rule from "../../../src/rules/rules/joints/colours-collide.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

/** Two leads joined as they should be; in which colours is what matters. */
const joined = (
  vehicle: readonly [string, string],
  own: readonly [string, string],
  second = "switched-feed",
) =>
  build()
    .vehicle("X1", { "1": `constant-feed ${vehicle[0]}`, "2": `${second} ${vehicle[1]}` })
    .unit("X2", { "1": `constant-feed ${own[0]}`, "2": `${second} ${own[1]}` })
    .path("X1.1", "XJ1", "X2.1")
    .path("X1.2", "XJ2", "X2.2");

testRule(rule, {
  silent: [
    { name: "the same colours for the same things", build: joined(["RD", "YE"], ["RD", "YE"]) },
    { name: "other colours altogether", build: joined(["RD", "YE"], ["OG", "PK"]) },
    { name: "another tracer", build: joined(["RD", "YE"], ["OG", "RD/BK"]) },
    {
      name: "both leads are marked",
      build: joined(["RD", "YE"], ["OG", "RD"])
        .change("W1", { label: "constant" })
        .change("W4", { label: "switched" }),
    },
    {
      name: "neither is a feed or a ground",
      build: build()
        .vehicle("X1", { "1": "mute PK", "2": "speed WH" })
        .unit("X2", { "1": "mute WH", "2": "speed BU" })
        .path("X1.1", "XJ1", "X2.1")
        .path("X1.2", "XJ2", "X2.2"),
    },
    {
      name: "on one side only",
      build: build()
        .vehicle("X1", { "1": "constant-feed RD", "2": "switched-feed RD" })
        .unit("X2", { "1": "constant-feed OG", "2": "switched-feed PK" })
        .path("X1.1", "XJ1", "X2.1")
        .path("X1.2", "XJ2", "X2.2"),
    },
    {
      name: "plugs, not joints: nothing is joined by hand",
      build: build()
        .vehicle("X1", { "1": "constant-feed RD", "2": "switched-feed YE" })
        .unit("X2", { "1": "constant-feed OG", "2": "switched-feed RD" })
        .path("X1.1", "X2.1")
        .path("X1.2", "X2.2"),
    },
  ],
  found: [
    {
      name: "red is constant here, switched there",
      build: joined(["RD", "YE"], ["OG", "RD"]),
      findings: [
        { at: ["X1.1", "X2.2"], says: "red is X1.1 constant feed, but also X2.2 switched feed", fix: null },
      ],
    },
    {
      name: "crossed colours are two traps of one pair",
      build: joined(["RD", "YE"], ["YE", "RD"]),
      findings: [{ at: ["X1.1", "X2.2", "X1.2", "X2.1"], fix: null }],
    },
    {
      name: "one of the two is marked",
      build: joined(["RD", "YE"], ["OG", "RD"]).change("W1", { label: "constant" }),
      findings: [{ at: ["X1.1", "X2.2"], fix: null }],
    },
    {
      name: "a feed and a speaker",
      build: build()
        .vehicle("X1", { "1": "speaker-front-left-plus YE", "2": "constant-feed RD" })
        .unit("X2", { "1": "speaker-front-left-plus WH", "2": "constant-feed YE" })
        .path("X1.1", "XJ1", "X2.1")
        .path("X1.2", "XJ2", "X2.2"),
      findings: [{ at: ["X1.1", "X2.2"], fix: null }],
    },
  ],
});
