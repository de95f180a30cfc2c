import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const coupling = () =>
  build()
    .vehicle(
      "X1",
      {
        "1": "indicator-left YE 1.5 fuse:10",
        "3": "ground-lamps WH 2.5",
        "9": "constant-feed OG 2.5 fuse:15",
        "13": "ground-constant WH/RD 2.5",
      },
      { shell: "ISO 11446" },
    )
    .part("load", "E1", { type: "lamp", function: "indicator-left", current_A: 1.75 })
    .part("load", "E2", { type: "lamp", function: "interior-lamp", current_A: 2 })
    .wire("X1.1", "E1.+")
    .wire("X1.9", "E2.+");

export default defineExample({
  page: [
    "The 13-pin coupling has three returns: 3 for the lamps, 13 for the constant feed, 11 for the switched one. In the trailer they stay apart.",
    "Joined, one of them carries the current of all, and when its contact corrodes the refrigerator's current looks for a way back through the lamps.",
  ],
  trips: () => coupling().path("E1.−", "XJ1", "X1.3").path("E2.−", "XJ1", "X1.13"),
  quiet: () => coupling().wire("E1.−", "X1.3").wire("E2.−", "X1.13"),
  quietBecause: "Each return serves what its own feed feeds.",
});
