import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const cooler = (fuse_A: number) =>
  build()
    .vehicle("X1", { "1": `switched-feed YE 4 fuse:${fuse_A}`, "2": "ground BN 4" })
    .part("load", "E1", { type: "other", name: "cool box", current_A: 12, function: "switched-feed" })
    .wire("X1.1", "E1.+", "YE", { area_mm2: 4, length_m: 1 })
    .wire("E1.−", "X1.2", "BN", { area_mm2: 4, length_m: 1 });

export default defineExample({
  page: [
    "A lead of the vehicle has a fuse that was chosen for what its maker hung on it. What is added to it counts towards the same fuse; when that blows, the vehicle's own load is dead too.",
    "Never put a bigger fuse in the vehicle's box. A large load gets a fused lead of its own from the battery, and if it has to come with the key, a relay that the vehicle's lead only drives.",
  ],
  trips: () => cooler(10),
  quiet: () => cooler(20),
  quietBecause: "12 A is 60 % of the 20 A fuse behind the lead.",
});
