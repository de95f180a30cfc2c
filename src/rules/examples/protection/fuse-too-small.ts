import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const heater = (rating_A: number) =>
  build()
    .part("supply", "G1", { cover: "boot" })
    .part("fuse", "F1", { rating_A })
    .part("load", "E1", { type: "heater", current_A: 9, function: "constant-feed" })
    .wire("G1.+", "F1", "RD", { area_mm2: 4, length_m: 0.2 })
    .wire("F1", "E1.+", "RD", { area_mm2: 4, length_m: 2 })
    .wire("E1.−", "XE1", "BK", { area_mm2: 4, length_m: 0.3 })
    .wire("G1.−", "XE2", "BK", { area_mm2: 16, length_m: 0.3 });

export default defineExample({
  page: [
    "A fuse that carries nearly its rating for hours gets hot, ages and opens one day without a fault. Then somebody fits a bigger one, and the wire is no longer protected.",
    "So what flows for good stays at four fifths of the rating or less. An amplifier is judged more mildly: it takes what its plate states only at full power.",
  ],
  trips: () => heater(10),
  quiet: () => heater(15),
  quietBecause: "9 A is 60 % of the fuse's 15 A, and the 4 mm² lead bears far more.",
});
