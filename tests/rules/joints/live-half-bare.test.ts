import { feed } from "../../../src/rules/examples/joints/lamp.ts";
import rule from "../../../src/rules/rules/joints/live-half-bare.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const bare = { method: "bullet-pair", cover: "housing", liveHalf: "bare" } as const;
const lead = (line: string) =>
  build()
    .vehicle("X1", { "1": line })
    .unit("X2", { "1": line.split(" ")[0]! })
    .part("splice", "XJ1", bare)
    .path("X1.1", "XJ1", "X2.1");

testRule(rule, {
  silent: [
    { name: "shrouded", build: feed({ ...bare, liveHalf: "shrouded" }) },
    { name: "nobody has said", build: feed({ ...bare, liveHalf: "unknown" }) },
    { name: "a joint that cannot be parted", build: feed({ ...bare, method: "crimped-butt" }) },
    { name: "a ground", build: lead("ground BN") },
    { name: "a speaker lead", build: lead("speaker-front-left-plus WH takes") },
  ],
  found: [
    {
      name: "a constant feed",
      build: feed(bare),
      findings: [
        {
          at: ["XJ1"],
          says: "X1.1 constant feed (red), at all times, behind its own 20 A fuse",
          fix: "Put the shrouded half of XJ1 on the live side",
        },
      ],
    },
    {
      name: "behind a fuse of its own",
      build: build()
        .part("supply", "G1", { voltage_V: 24 })
        .part("splice", "XJ1", bare)
        .part("load", "E1")
        .path("G1.+", "F1", "XJ1", "E1.+")
        .path("E1.−", "XE1"),
      findings: [{ at: ["XJ1"], fix: "Put the shrouded half of XJ1 on the live side" }],
    },
    {
      name: "live with the key alone",
      build: lead("switched-feed RD fuse:5"),
      findings: [{ at: ["XJ1"], severity: "fault", fix: "Put the shrouded half of XJ1 on the live side" }],
    },
    {
      name: "beyond a mated plug",
      build: build()
        .vehicle("X1", { "1": "constant-feed RD fuse:5" })
        .unit("X2", { "1": "unknown" })
        .mate("X1", "X2")
        .part("splice", "XJ1", bare)
        .part("load", "E1")
        .path("X2.1", "XJ1", "E1.+")
        .path("E1.−", "XE1"),
      findings: [{ at: ["XJ1"], fix: "Put the shrouded half of XJ1 on the live side" }],
    },
  ],
});
