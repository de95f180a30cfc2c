import rule from "../../../src/rules/rules/relays/relay-contact-overloaded.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const bench = (rating_A: number | "unknown", ...amps: readonly number[]) => {
  const harness = build()
    .vehicle("X1", { "1": "constant-feed fuse:80", "3": "ground" })
    .part("relay", "K1", { poles: "changeover", suppression: "resistor", rating_A })
    .part("switch", "S1")
    .wire("X1.1", "K1.30", "RD", { area_mm2: 16, length_m: 0.5 })
    .path("X1.1", "S1", "K1.86")
    .wire("K1.85", "X1.3");
  for (const [index, current_A] of amps.entries())
    harness
      .part("load", `E${index + 1}`, { type: "heater", function: "heater-control", current_A })
      .wire("K1.87", `E${index + 1}.+`, "RD", { area_mm2: 16, length_m: 0.5 })
      .wire(`E${index + 1}.−`, "X1.3", "BN", { area_mm2: 16, length_m: 0.5 });
  return harness;
};

testRule(rule, {
  silent: [
    { name: "below its rating", build: bench(30, 20) },
    { name: "no rating stated", build: bench("unknown", 60) },
    { name: "nothing on it", build: bench(10) },
    { name: "a dead short is told elsewhere", build: bench(10).wire("K1.87", "X1.3") },
  ],
  found: [
    { name: "one load", build: bench(20, 40), findings: [{ at: ["K1.30"], says: "rated 20 A", fix: null }] },
    { name: "two together", build: bench(30, 20, 20), findings: [{ at: ["K1.30"], fix: null }] },
    {
      name: "the load at rest, on 87a",
      build: bench(10)
        .part("load", "E9", { type: "heater", function: "heater-control", current_A: 20 })
        .wire("K1.87a", "E9.+", "RD", { area_mm2: 6 })
        .wire("E9.−", "X1.3", "BN", { area_mm2: 6 }),
      findings: [{ at: ["K1.30"], says: "rated 10 A", fix: null }],
    },
  ],
});
