import rule from "../../../src/rules/rules/protection/wire-overloaded.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const lamp = (current_A: number | "unknown", area_mm2: number | "unknown") =>
  build()
    .part("supply", "G1")
    .part("fuse", "F1", { rating_A: 60 })
    .part("load", "E1", { type: "heater", current_A, behaviour: "constant-current" })
    .wire("G1.+", "F1", "RD", { area_mm2: 16, length_m: 0.2 })
    .wire("F1", "E1.+", "RD", { area_mm2, length_m: 1, insulation: "thin-wall-105" })
    .wire("E1.−", "XE1", "BK", { area_mm2: 16, length_m: 0.3 })
    .wire("G1.−", "XE2", "BK", { area_mm2: 16, length_m: 0.3 });
/** Seven loaded wires in one bundle. */
const bundle = (current_A: number) => {
  const harness = build().part("supply", "G1").wire("G1.−", "XE1", "BK", { area_mm2: 50, length_m: 0.3 });
  const names: string[] = [];
  for (let i = 1; i <= 7; i++) {
    harness
      .part("fuse", `F${i}`, { rating_A: 15 })
      .part("load", `E${i}`, { type: "heater", current_A, behaviour: "constant-current" })
      .wire("G1.+", `F${i}`, "RD", { area_mm2: 6, length_m: 0.2 })
      .wire(`E${i}.−`, "XE1", "BK", { area_mm2: 6, length_m: 0.2 });
    names.push(`V${i}`);
    harness.wire(`F${i}`, `E${i}.+`, "RD", {
      designation: `V${i}`,
      area_mm2: 1,
      length_m: 2,
      insulation: "thin-wall-105",
    });
  }
  return harness.run("B1", { zone: "cabin" }, names);
};

testRule(rule, {
  silent: [
    { name: "20 A in 1 mm² that bears 20 A", build: lamp(20, 1) },
    { name: "no size stated", build: lamp(50, "unknown") },
    { name: "no current stated", build: lamp("unknown", 0.5) },
    { name: "seven wires in a bundle, each with less than half of what it bears", build: bundle(9) },
    { name: "a dead short: another rule's", build: lamp(5, 1).path("F1", "XE1") },
  ],
  found: [
    {
      name: "25 A in 1 mm²",
      build: lamp(25, 1),
      findings: [{ at: ["W2"], says: "W2 (red) carries 25 A", fix: null }],
    },
    {
      name: "19 A in an engine bay, in wire that bears 20 A elsewhere",
      build: lamp(19, 1).run("B1", { zone: "engine-bay" }, ["W2"]),
      findings: [{ at: ["W2"], says: "bears 17 A", fix: null }],
    },
    {
      name: "seven in a bundle",
      build: bundle(12),
      findings: [
        {
          at: ["V1", "V2", "V3", "V4", "V5", "V6", "V7"],
          says: "bears 10 A with 7 loaded wires in its bundle",
          fix: null,
        },
      ],
    },
    {
      name: "two wires in a row, through a switch; the return is thin too",
      build: lamp(25, 1)
        .change("W2", {
          ends: [
            { part: "p:F1" as never, contact: 2 },
            { part: "p:S1" as never, contact: 1 },
          ],
        })
        .part("switch", "S1")
        .wire("S1", "E1.+", "RD", { area_mm2: 1, length_m: 1, insulation: "thin-wall-105" })
        .change("W3", { area_mm2: 1, insulation: "thin-wall-105" }),
      findings: [{ at: ["W2", "W3", "W5"], fix: null }],
    },
  ],
});
