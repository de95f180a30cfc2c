import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const lamps = (area_mm2: number | "unknown") =>
  build()
    .vehicle("X1", { "1": "constant-feed RD 2.5 fuse:15", "2": "ground BN" })
    .part("load", "E1", { type: "lamp", current_A: 4, function: "work-lamp" })
    .part("load", "E2", { type: "lamp", current_A: 4, function: "work-lamp" })
    .part("switch", "S1")
    .wire("X1.1", "S1", "RD", { area_mm2: 2.5, length_m: 1 })
    .wire("S1", "XJ1", "RD", { area_mm2: 2.5, length_m: 1 })
    .wire("XJ1", "E1.+", "RD", { area_mm2: 2.5, length_m: 1 })
    .wire("XJ1", "E2.+", "RD", { area_mm2, length_m: 1 })
    .path("E1.−", "XJ2", "X1.2")
    .path("E2.−", "XJ2");

export default defineExample({
  page: [
    "Fuses, voltage drop and heat are all reckoned from the size of a wire. Where one size is missing, all that is said of the leads before and behind it rests on a guess.",
    "Read it off the print on the cable, or count and measure the strands. Enter it as it is written: a gauge number and square millimetres are not the same series, and cable sold by gauge often holds less copper than its number says.",
  ],
  trips: () => lamps("unknown"),
  quiet: () => lamps(2.5),
  quietBecause: "Every power lead has a size.",
});
