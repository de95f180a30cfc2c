import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const lamp = () =>
  build()
    .part("supply", "G1", { cover: "boot" })
    .part("load", "E1", { type: "lamp", current_A: 4, function: "work-lamp" })
    .path("E1.−", "XE1")
    .path("G1.−", "XE2");

export default defineExample({
  page: [
    "A fuse protects the wire, not the lamp. Every lead that leaves a battery needs one at its beginning, because from there on a nail, a sharp edge or a crushed clip can put the whole battery across it.",
    "Look along the lead from the post: the first thing on it must be a fuse or a breaker. Only a pigtail of up to 178 mm (7 in) may do without.",
    "Follow the maker's instructions and the local code for what the harness is fitted to.",
  ],
  trips: () => lamp().wire("G1.+", "E1.+", "RD", { area_mm2: 1.5 }),
  quiet: () =>
    lamp()
      .part("fuse", "F1", { rating_A: 10 })
      .wire("G1.+", "F1", "RD", { area_mm2: 1.5, length_m: 0.15 })
      .wire("F1", "E1.+", "RD", { area_mm2: 1.5, length_m: 3 }),
  quietBecause: "The lead begins with a fuse.",
});
