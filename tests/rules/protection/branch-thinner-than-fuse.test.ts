import rule from "../../../src/rules/rules/protection/branch-thinner-than-fuse.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const board = (rating_A = 40) =>
  build()
    .part("supply", "G1")
    .part("fuse", "F1", { rating_A })
    .part("load", "E1", { current_A: 8 })
    .part("load", "E2", { current_A: 1 })
    .path("E1.−", "XE1")
    .path("E2.−", "XE1", "G1.−")
    .wire("G1.+", "F1", "RD", { area_mm2: 6 })
    .wire("F1", "XJ1", "RD", { area_mm2: 6 })
    .wire("XJ1.2", "E1.+", "RD", { area_mm2: 6 });
const branch = (area_mm2: number, rating_A = 40) =>
  board(rating_A).wire("XJ1.2", "E2.+", "RD", { designation: "W9", area_mm2 });

testRule(rule, {
  silent: [
    { name: "a branch as thick", build: branch(6) },
    { name: "a small fuse above a thin branch", build: branch(1, 15) },
    {
      name: "a fuse close to where it branches",
      build: board()
        .part("fuse", "F2", { rating_A: 5 })
        .wire("XJ1.2", "F2", "RD", { area_mm2: 1, length_m: 0.3 })
        .wire("F2", "E2.+", "RD", { area_mm2: 1 }),
    },
    { name: "a pigtail of 150 mm", build: branch(1).change("W9", { length_m: 0.15 }) },
    {
      name: "no fuse above that is rated",
      build: branch(1).change("F1", { rating_A: "unknown" }),
    },
    {
      name: "the lead that leaves the fuse is thin itself: another rule's",
      build: branch(1).change("W5", { area_mm2: 1 }),
    },
  ],
  found: [
    {
      name: "a thin branch at a distribution joint",
      build: branch(1),
      findings: [{ at: ["W9", "XJ1"], says: "branches off at XJ1 behind F1 (40 A)", fix: null }],
    },
    {
      name: "a little too thin",
      build: branch(1, 25),
      findings: [{ at: ["W9", "XJ1"], severity: "weak", fix: null }],
    },
    {
      name: "its fuse far from where it branches",
      build: board()
        .part("fuse", "F2", { rating_A: 5 })
        .wire("XJ1.2", "F2", "RD", { area_mm2: 1, length_m: 2, designation: "W9" })
        .wire("F2", "E2.+", "RD", { area_mm2: 1 }),
      findings: [{ at: ["W9", "XJ1"], fix: null }],
    },
    {
      name: "two joints on, still behind the same fuse",
      build: board()
        .part("load", "E3")
        .wire("XJ1.2", "XJ2", "RD", { area_mm2: 1, designation: "W9" })
        .wire("XJ2", "E2.+", "RD", { area_mm2: 1, designation: "W10" })
        .wire("XJ2", "E3.+", "RD", { area_mm2: 1, designation: "W11" }),
      findings: [{ at: ["W9", "W10", "W11", "XJ1"], says: "2 more of the wires behind it", fix: null }],
    },
    {
      name: "behind the vehicle's own fuse",
      build: build()
        .vehicle("X1", { "1": "constant-feed fuse:30" })
        .part("load", "E1")
        .part("load", "E2")
        .wire("X1.1", "XJ1", "RD", { area_mm2: 2.5 })
        .wire("XJ1", "E1.+", "RD", { area_mm2: 2.5 })
        .wire("XJ1", "E2.+", "RD", { area_mm2: 0.5, designation: "W9" }),
      findings: [{ at: ["W9", "XJ1"], fix: null }],
    },
  ],
});
