import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const at = (length_m: number) =>
  build()
    .part("supply", "G1", { cover: "boot" })
    .part("fuse", "F1", { rating_A: 15 })
    .part("load", "E1", { type: "lamp", current_A: 4, function: "work-lamp" })
    .wire("G1.+", "F1", "RD", { area_mm2: 2.5, length_m })
    .wire("F1", "E1.+", "RD", { area_mm2: 2.5, length_m: 3 })
    .path("E1.−", "XE1")
    .path("G1.−", "XE2");

export default defineExample({
  page: [
    "A fuse protects only what lies behind it. The stretch between the battery and the fuse has none, so it is kept as short as can be.",
    "How short, the books do not agree: 178 mm (7 in) is law on American boats, 457 mm (18 in) is the habit of car audio, and a lead in conduit all the way may be longer. The finding names the book that your harness follows.",
  ],
  trips: () => at(1.8),
  quiet: () => at(0.3),
  quietBecause: "The fuse stands 300 mm from the post, within the 457 mm of the road-vehicle profile.",
});
