import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const heater = (area_mm2: number) =>
  build()
    .part("supply", "G1", { cover: "boot" })
    .part("fuse", "F1", { rating_A: 40 })
    .part("load", "E1", { type: "heater", current_A: 30, function: "constant-feed" })
    .wire("G1.+", "F1", "RD", { area_mm2: 10, length_m: 0.2 })
    .wire("F1", "E1.+", "RD", { area_mm2, length_m: 0.4, insulation: "thin-wall-105" })
    .wire("E1.−", "XE1", "BK", { area_mm2: 10, length_m: 0.3 })
    .wire("G1.−", "XE2", "BK", { area_mm2: 16, length_m: 0.3 });

export default defineExample({
  page: [
    "A wire warms itself with the square of its current. Above what it bears, the insulation goes soft, and where the wire lies on an edge it wears through.",
    "How much it bears depends on its size and insulation, on the warmth around it and on its neighbours: many loaded wires in one bundle warm each other. The finding names the figure and the book.",
  ],
  trips: () => heater(1),
  quiet: () => heater(10),
  quietBecause: "10 mm² bears far more than the heater's 30 A.",
});
