import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const rated = (rating_A: number) =>
  build()
    .part("supply", "G1", { cover: "boot" })
    .part("fuse", "F1", { rating_A })
    .part("load", "E1", { type: "lamp", current_A: 4, function: "work-lamp" })
    .wire("G1.+", "F1", "RD", { area_mm2: 6, length_m: 0.15 })
    .wire("F1", "E1.+", "RD", { area_mm2: 1, length_m: 3, insulation: "thin-wall-105" })
    .path("E1.−", "XE1")
    .path("G1.−", "XE2");

export default defineExample({
  page: [
    "A fuse opens above its rating. If the wire behind it bears less than that, the wire gets hot first, and what burns is the loom.",
    "The load is looked up first, then the wire for the load, then the fuse for the wire. A fuse that blows is not cured by a bigger one.",
    "What a wire bears depends on its size, its insulation and where it lies; the finding names the table it was read from.",
  ],
  trips: () => rated(40),
  quiet: () => rated(15),
  quietBecause: "The 1 mm² lead bears 20 A and its fuse opens above 15 A.",
});
