import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const pump = (area_mm2: number) =>
  build()
    .part("supply", "G1", { cover: "boot" })
    .part("fuse", "F1", { rating_A: 10 })
    .part("load", "E1", { type: "motor", current_A: 6, function: "water-pump" })
    .wire("G1.+", "F1", "RD", { area_mm2: 4, length_m: 0.2 })
    .wire("F1", "E1.+", "RD", { area_mm2, length_m: 7 })
    .wire("E1.−", "XE1", "BK", { area_mm2: 4, length_m: 0.3 })
    .wire("G1.−", "XE2", "BK", { area_mm2: 16, length_m: 0.3 });

export default defineExample({
  page: [
    "Every lead loses some volts to its own resistance, on the way to the load and on the way back. A long thin lead loses so many that a lamp is dim or a motor weak, although a meter shows full volts as long as nothing runs.",
    "The drop is reckoned from stated lengths and sizes only. Measure it under load: one probe on the battery's post, the other on the load's contact, first on the plus side and then on the minus side.",
  ],
  trips: () => pump(1),
  quiet: () => pump(4),
  quietBecause: "Four times the copper loses a quarter of the volts.",
});
