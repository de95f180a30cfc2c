import rule from "../../../src/rules/rules/protection/drop-too-great.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const pump = (area_mm2: number | "unknown", length_m: number | "unknown", more = {}) =>
  build()
    .part("supply", "G1")
    .part("fuse", "F1", { rating_A: 15 })
    .part("load", "E1", { type: "motor", current_A: 8, behaviour: "constant-current", ...more })
    .wire("G1.+", "F1", "RD", { area_mm2: 6, length_m: 0.2 })
    .wire("F1", "E1.+", "RD", { area_mm2, length_m })
    .wire("E1.−", "XE1", "BK", { area_mm2: 6, length_m: 0.3 })
    .wire("G1.−", "XE2", "BK", { area_mm2: 16, length_m: 0.3 });

testRule(rule, {
  silent: [
    { name: "thick and short", build: pump(4, 3) },
    { name: "no length stated", build: pump(0.5, "unknown") },
    { name: "no size stated", build: pump("unknown", 20) },
    { name: "a lamp may lose 10 %", build: pump(1, 6, { type: "lamp" }) },
    { name: "no current stated", build: pump(0.5, 20, { current_A: "unknown" }) },
  ],
  found: [
    {
      name: "1 mm² over 6 m",
      build: pump(1, 6),
      findings: [{ at: ["W2", "E1.+"], says: "0.5 V is the most", fix: null }],
    },
    {
      name: "the ground side counts",
      build: pump(4, 1).change("W3", { area_mm2: 0.75, length_m: 5 }),
      findings: [{ at: ["W3", "E1.+"], says: "Most of it goes in W3 (black)", fix: null }],
    },
    {
      name: "two loads behind one thin lead",
      build: pump(1, 6)
        .part("load", "E2", { type: "camera", current_A: 0.5 })
        .wire("E1.+", "E2.+", "RD", { area_mm2: 1, length_m: 1 })
        .wire("E2.−", "XE1", "BK", { area_mm2: 1, length_m: 0.2 }),
      findings: [{ at: ["W2", "E2.+"], says: "1 more behind it", fix: null }],
    },
    {
      name: "length by its run",
      build: pump(1, "unknown").run("B1", { length_m: 6 }, ["W2"]),
      findings: [{ at: ["W2", "E1.+"], fix: null }],
    },
  ],
});
