import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const amplifier = (wakes: "unknown" | "by-signal") =>
  build()
    .module("A2", {
      role: "amplifier",
      wakes,
      rows: { "+": "constant-feed 10 20A", GND: "ground 10", REM: "amplifier-turn-on takes" },
    })
    .vehicle("X1", { "1": "amplifier-feed RD 10 fuse:40", "2": "ground BK 10" })
    .wire("X1.1", "A2.+")
    .wire("X1.2", "A2.GND");

export default defineExample({
  page: [
    "An amplifier sleeps until 12 V reach its turn-on lead. With nothing joined there it stays dead, although feed, ground and sound leads are all in order.",
    "Some amplifiers wake by the sound itself. Say so in the amplifier's sheet, and the lead may stay open.",
  ],
  trips: () => amplifier("unknown"),
  quiet: () => amplifier("by-signal"),
  quietBecause: "This amplifier is set to wake by its signal.",
});
