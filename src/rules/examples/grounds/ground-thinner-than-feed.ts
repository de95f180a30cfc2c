import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const unit = (area_mm2: number) =>
  build()
    .vehicle("X1", { "1": "constant-feed RD fuse:15" })
    .unit("X2", { "1": "constant-feed YE", "2": "ground BK" })
    .wire("X1.1", "X2.1", "RD", { area_mm2: 2.5, length_m: 1 })
    .part("ground", "XE1", { surface: "bare-metal" })
    .wire("X2.2", "XE1", "BK", { area_mm2, length_m: 0.4 });

export default defineExample({
  page: [
    "The same current flows in the ground as in the feed. A thinner ground loses more volts and grows hotter, and nobody looks there.",
    "Take the size of the feed all the way to the stud. Several ground leads of one unit count together.",
  ],
  trips: () => unit(1),
  quiet: () => unit(2.5),
  quietBecause: "Feed and ground are of one size.",
});
