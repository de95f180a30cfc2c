import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const unit = (length_m: number) =>
  build()
    .vehicle("X1", { "1": "constant-feed RD fuse:15" })
    .module("A1", { rows: { "+": "constant-feed 8A", GND: "ground" } })
    .part("ground", "XE1", { surface: "bare-metal" })
    .wire("X1.1", "A1.+", "RD", { area_mm2: 2.5, length_m: 1 })
    .wire("A1.GND", "XE1", "BK", { area_mm2: 2.5, length_m });

export default defineExample({
  page: [
    "Every lead loses a little of the volts. What is lost in the feed only makes the unit weaker; what is lost in the ground moves its zero, by which it measures everything.",
    "Measure it under load, from the unit's ground contact to the stud. A tenth of a volt is the usual limit.",
  ],
  trips: () => unit(3),
  quiet: () => unit(0.4),
  quietBecause: "Under a short lead of the same size little is lost.",
});
