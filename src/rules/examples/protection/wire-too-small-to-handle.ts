import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const lamp = () =>
  build()
    .part("supply", "G1", { cover: "boot" })
    .part("fuse", "F1", { rating_A: 3 })
    .part("load", "E1", { type: "lamp", current_A: 2, function: "interior-lamp" })
    .wire("G1.+", "F1", "RD", { area_mm2: 2.5, length_m: 0.2 })
    .wire("F1", "E1.+", "RD", { area_mm2: 0.35, length_m: 2 })
    .wire("E1.−", "XE1", "BK", { area_mm2: 2.5, length_m: 0.3 })
    .wire("G1.−", "XE2", "BK", { area_mm2: 16, length_m: 0.3 });

export default defineExample({
  page: [
    "A single thin lead may carry its current with ease and yet not live long: it breaks when it is pulled through a hole, pinched behind a panel or pushed aside.",
    "In a sheath, or as one core of a cable, it is held by its neighbours and may be a size thinner. Leads of electronics that carry less than 1 A are not meant.",
  ],
  trips: lamp,
  quiet: () => lamp().run("B1", { covering: "split-loom", zone: "cabin", length_m: 1.9 }, ["W2"]),
  quietBecause: "The thin lead lies in split loom.",
});
