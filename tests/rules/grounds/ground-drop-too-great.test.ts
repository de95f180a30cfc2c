import rule from "../../../src/rules/rules/grounds/ground-drop-too-great.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const unit = (amps: string) =>
  build()
    .vehicle("X1", { "1": "constant-feed fuse:20", "2": "ground" })
    .module("A1", { rows: { "+": `constant-feed ${amps}`, GND: "ground" } })
    .part("ground", "XE1", { surface: "bare-metal" })
    .wire("X1.1", "A1.+", "RD", { area_mm2: 2.5, length_m: 1 });
const size = (area_mm2: number, length_m: number) => ({ area_mm2, length_m });

testRule(rule, {
  silent: [
    { name: "short and thick", build: unit("10A").wire("A1.GND", "XE1", "BK", size(2.5, 0.4)) },
    { name: "no length stated", build: unit("20A").wire("A1.GND", "XE1", "BK", { area_mm2: 1.5 }) },
    { name: "no size stated", build: unit("20A").wire("A1.GND", "XE1", "BK", { length_m: 3 }) },
    { name: "no current stated", build: unit("").wire("A1.GND", "XE1", "BK", size(0.5, 5)) },
    {
      name: "a heater, which does not mind",
      build: build()
        .vehicle("X1", { "1": "constant-feed fuse:20" })
        .part("load", "E1", { type: "heater", current_A: 15 })
        .part("ground", "XE1", { surface: "bare-metal" })
        .wire("X1.1", "E1.+", "RD", size(2.5, 1))
        .wire("E1.−", "XE1", "BK", size(2.5, 2)),
    },
    {
      name: "half a volt, where the shop allows it",
      build: unit("10A")
        .wire("A1.GND", "XE1", "BK", size(1.5, 2))
        .rules({
          profile: "shop",
          shop: "Thistledown workshop",
          limits: [{ name: "groundDrop_V", value: 0.5 }],
        }),
    },
  ],
  found: [
    {
      name: "long and thin",
      build: unit("10A").wire("A1.GND", "XE1", "BK", size(1.5, 3)),
      findings: [{ at: ["A1.GND"], says: "at most 0.1 V may be (MECP", fix: null }],
    },
    {
      name: "through a joint to the vehicle's ground lead",
      build: unit("10A").path("A1.GND", "XJ1", "X1.2").change("W2", size(2.5, 1)).change("W3", size(2.5, 2)),
      findings: [{ at: ["A1.GND"], says: "X1.2 ground", fix: null }],
    },
  ],
});
