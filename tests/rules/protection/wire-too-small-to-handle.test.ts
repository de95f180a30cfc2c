import rule from "../../../src/rules/rules/protection/wire-too-small-to-handle.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const lamp = (area_mm2: number, current_A: number | "unknown" = 2) =>
  build()
    .part("supply", "G1")
    .part("fuse", "F1", { rating_A: 3 })
    .part("load", "E1", { type: "lamp", current_A })
    .wire("G1.+", "F1", "RD", { area_mm2: 2.5, length_m: 0.2 })
    .wire("F1", "E1.+", "RD", { area_mm2, length_m: 2 })
    .wire("E1.−", "XE1", "BK", { area_mm2: 2.5, length_m: 0.3 })
    .wire("G1.−", "XE2", "BK", { area_mm2: 16, length_m: 0.3 });

testRule(rule, {
  silent: [
    { name: "0.5 mm²", build: lamp(0.5) },
    { name: "electronics of 0.3 A", build: lamp(0.22, 0.3) },
    { name: "nobody has said what flows", build: lamp(0.22, "unknown") },
    { name: "a size thinner in split loom", build: lamp(0.35).run("B1", { covering: "split-loom" }, ["W2"]) },
    { name: "a pigtail", build: lamp(0.35).change("W2", { length_m: 0.15 }) },
    {
      name: "1 mm² in a sheath in a boat",
      build: lamp(1)
        .rules({ profile: "boat" })
        .change("W1", { area_mm2: 4 })
        .change("W3", { area_mm2: 4 })
        .run("B1", { covering: "conduit" }, ["W2"]),
    },
  ],
  found: [
    {
      name: "0.35 mm² alone",
      build: lamp(0.35),
      findings: [{ at: ["W2"], says: "W2 (red) has 0.35 mm² and carries 2", fix: null }],
    },
    {
      name: "0.22 mm² in split loom",
      build: lamp(0.22).run("B1", { covering: "split-loom" }, ["W2"]),
      findings: [{ at: ["W2"], says: "in a sheath", fix: null }],
    },
    {
      name: "1 mm² alone in a boat",
      build: lamp(1).rules({ profile: "boat" }),
      findings: [{ at: ["W2"], says: "33 CFR 183.425(d)", fix: null }],
    },
  ],
});
