import rule from "../../../src/rules/rules/protection/fuse-bigger-than-wire.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const lamp = (rating_A: number | "unknown") =>
  build()
    .part("supply", "G1")
    .part("fuse", "F1", { rating_A })
    .part("load", "E1", { current_A: 8 })
    .path("E1.−", "XE1", "G1.−")
    .wire("G1.+", "F1", "RD", { area_mm2: 6 });
const on = (rating_A: number | "unknown", area_mm2: number | "unknown", more = {}) =>
  lamp(rating_A).wire("F1", "E1.+", "RD", { designation: "W9", area_mm2, ...more });
const W105 = { insulation: "thin-wall-105" } as const;

testRule(rule, {
  silent: [
    { name: "20 A on 1 mm² that bears 20 A", build: on(20, 1, W105) },
    { name: "no size stated", build: on(30, "unknown") },
    { name: "no rating stated", build: on("unknown", 0.5) },
    { name: "a boat's fuse of 150 % of its wire", build: on(30, 1, W105).rules({ profile: "boat" }) },
    {
      name: "the harness follows the 150 % rule",
      build: on(30, 1, W105).settings({
        electrical: { ...build().harness.settings.electrical, fuseRule: "150-percent" },
      }),
    },
    { name: "a pigtail of 178 mm", build: on(30, 0.5, { length_m: 0.178 }) },
    {
      name: "thin wire behind its own smaller fuse",
      build: lamp(30)
        .part("fuse", "F2", { rating_A: 5 })
        .wire("F1", "F2", "RD", { area_mm2: 4 })
        .wire("F2", "E1.+", "RD", { area_mm2: 0.5 }),
    },
    {
      name: "a signal lead a little thinner than its fuse",
      build: build()
        .vehicle("X1", { "1": "reverse fuse:10" })
        .unit("X2", { "1": "camera-trigger 0.01A" })
        .wire("X1.1", "X2.1", "GN", { area_mm2: 0.35, length_m: 6 }),
    },
    {
      name: "the return behind the load",
      build: lamp(30).wire("F1", "E1.+", "RD", { area_mm2: 4 }).change("W1", { area_mm2: 0.5 }),
    },
    {
      name: "a thin branch behind a thick lead: another rule's",
      build: lamp(30)
        .part("load", "E2")
        .wire("F1", "XJ1", "RD", { area_mm2: 4 })
        .wire("XJ1", "E1.+", "RD", { area_mm2: 4 })
        .wire("XJ1", "E2.+", "RD", { area_mm2: 0.5 }),
    },
  ],
  found: [
    {
      name: "40 A on 1 mm²",
      build: on(40, 1, W105),
      findings: [{ at: ["F1", "W9"], says: "W9 (red, 1 mm²) bears 20 A by 33 CFR 183.425", fix: null }],
    },
    {
      name: "25 A on 1 mm²: within 150 %",
      build: on(25, 1, W105),
      findings: [{ at: ["F1", "W9"], severity: "weak", says: "125 % of that", fix: null }],
    },
    {
      name: "clad aluminium bears less",
      build: on(20, 1, { ...W105, material: "cca-15" }),
      findings: [{ at: ["F1", "W9"], severity: "weak", fix: null }],
    },
    {
      name: "behind a switch and a relay contact",
      build: lamp(40)
        .part("relay", "K1", { poles: "make" })
        .wire("F1", "S1", "RD", { area_mm2: 1 })
        .wire("S1", "K1.30", "RD", { area_mm2: 1 })
        .wire("K1.87", "E1.+", "RD", { area_mm2: 1 }),
      findings: [{ at: ["F1", "W4", "W5", "W6"], says: "2 more of its wires", fix: null }],
    },
    {
      name: "the fuse is the vehicle's own, behind its cavity",
      build: build()
        .vehicle("X1", { "1": "constant-feed fuse:30" })
        .part("load", "E1")
        .wire("X1.1", "E1.+", "RD", { area_mm2: 0.5 }),
      findings: [
        { at: ["X1.1", "W1"], says: "the 30 A fuse behind X1.1 lets through 273 % of that", fix: null },
      ],
    },
    {
      name: "thins in a plug, with nothing branching off",
      build: lamp(40)
        .unit("X1", { "1": "unknown none" })
        .unit("X2", { "1": "unknown none" })
        .mate("X1", "X2")
        .wire("F1", "X1.1", "RD", { area_mm2: 6 })
        .wire("X2.1", "E1.+", "RD", { area_mm2: 1 }),
      findings: [{ at: ["F1", "W5"], fix: null }],
    },
  ],
});
