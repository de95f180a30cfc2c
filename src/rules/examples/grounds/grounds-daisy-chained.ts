import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const size = { area_mm2: 1, length_m: 1 };
const units = (area_mm2: number) =>
  build()
    .vehicle("X1", { "1": "constant-feed RD fuse:10", "2": "constant-feed RD fuse:5" })
    .module("A1", { rows: { "+": "constant-feed 8A", GND: "ground" } })
    .module("A2", { rows: { "+": "constant-feed 0.5A", GND: "ground" } })
    .part("ground", "XE1", { surface: "bare-metal" })
    .wire("X1.1", "A1.+", "RD", size)
    .wire("X1.2", "A2.+", "RD", size)
    .wire("A1.GND", "XE1", "BK", { area_mm2, length_m: 1 });

export default defineExample({
  page: [
    "It saves wire to take the ground of a second unit to the first one's ground contact. From there on both currents flow in one lead, and what the strong one loses there lifts the zero of the weak one.",
    "Each unit gets a lead of its own, and they meet at the stud. A trainer calls that a star.",
  ],
  trips: () => units(1).wire("A2.GND", "A1.GND", "BK", size),
  quiet: () => units(2.5).wire("A2.GND", "XE1", "BK", size),
  quietBecause: "Each has a lead of its own, and the two meet at the stud.",
});
