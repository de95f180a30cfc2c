import { type Build, build } from "../build.ts";
import { defineExample } from "../example.ts";

const van = (area_mm2: number): Build =>
  build()
    .vehicle("X1", { "1": "reverse GN/WH 0.75 fuse:3", "2": "ground BN 1.5" })
    .module("A1", {
      name: "trailer camera",
      role: "camera",
      voltage_V: { least_V: 10.5, most_V: 16 },
      rows: { "1": "camera-power RD 0.8A", "2": "ground BK" },
    })
    .wire("X1.1", "A1.1", "RD", { area_mm2, length_m: 14 })
    .wire("X1.2", "A1.2", "BK", { area_mm2, length_m: 14 });

export default defineExample({
  page: [
    "A thin lead loses volts, twice: on the way there and on the way back. A camera far behind may have enough on a quiet day, and too little when the lamps come on.",
    "A meter at the camera's own plug shows it, with the camera working. Here the drop is reckoned in every position of the key, and told where the battery itself has volts enough.",
  ],
  trips: () => van(0.22),
  quiet: () => van(2.5),
  quietBecause: "Leads of 2.5 mm² lose a fifth of a volt, and the camera has what it needs.",
});
