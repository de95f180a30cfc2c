import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const old = () =>
  build()
    .vehicle("X1", {
      L: "stop-turn-left YE fuse:15",
      R: "stop-turn-right GN fuse:15",
      B: "constant-feed RD fuse:20",
      G: "ground WH",
    })
    .unit(
      "X2",
      { "1": "indicator-left YE 1.75A", "4": "indicator-right GN 1.75A", "6": "stop-lamp", "3": "ground WH" },
      { shell: "ISO 1724" },
    )
    .wire("X1.G", "X2.3");
const converter = () =>
  old()
    .module("A1", {
      role: "trailer",
      rows: {
        "+": "constant-feed takes",
        "-": "ground takes",
        LI: "stop-turn-left takes",
        RI: "stop-turn-right takes",
        LO: "indicator-left gives",
        RO: "indicator-right gives",
        SO: "stop-lamp gives",
      },
    })
    .wire("X1.B", "A1.+")
    .wire("A1.-", "X1.G")
    .wire("X1.L", "A1.LI")
    .wire("X1.R", "A1.RI")
    .wire("A1.LO", "X2.1")
    .wire("A1.RO", "X2.4")
    .wire("A1.SO", "X2.6");

export default defineExample({
  page: [
    "Some vehicles stop and turn with one lamp on each side, others have a lamp for each. Joined lead by lead, the brake lights both indicators of the trailer, or stops one that flashes.",
    "A converter listens to the one system and speaks the other.",
  ],
  trips: () => old().wire("X1.L", "X2.1").wire("X1.R", "X2.4").wire("X1.B", "XC1"),
  quiet: () => converter(),
  quietBecause: "A converter with a feed of its own stands between the two systems.",
});
