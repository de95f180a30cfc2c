import rule from "../../../src/rules/rules/relays/diode-too-small.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const bench = (rating_A: number | "unknown", ...amps: readonly number[]) => {
  const harness = build()
    .vehicle("X1", { "1": "ignition-feed fuse:20", "3": "ground" })
    .part("diode", "V1", { rating_A })
    .wire("X1.1", "V1.A");
  for (const [index, current_A] of amps.entries())
    harness
      .part("load", `E${index + 1}`, { type: "motor", function: "water-pump", current_A })
      .wire("V1.K", `E${index + 1}.+`)
      .wire(`E${index + 1}.−`, "X1.3");
  return harness;
};

testRule(rule, {
  silent: [
    { name: "at twice its current", build: bench(6, 3) },
    { name: "no rating stated", build: bench("unknown", 8) },
    { name: "across a coil it carries nothing", build: bench(1).part("relay", "K1").wire("X1.1", "K1.86") },
    {
      name: "the load goes past it",
      build: bench(1)
        .part("load", "E9", { type: "motor", function: "water-pump", current_A: 5 })
        .wire("V1.A", "E9.+")
        .wire("E9.−", "X1.3"),
    },
  ],
  found: [
    { name: "one load", build: bench(1, 4), findings: [{ at: ["V1"], says: "rated 1 A", fix: null }] },
    { name: "two together", build: bench(3, 2, 2), findings: [{ at: ["V1"], says: "4 A", fix: null }] },
    {
      name: "24 V",
      build: bench(1, 4).settings({ systemVoltage_V: 24 }),
      findings: [{ at: ["V1"], fix: null }],
    },
  ],
});
