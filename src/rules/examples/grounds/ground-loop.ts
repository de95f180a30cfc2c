import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const sound = (signalGround: "joined" | "isolated") =>
  build()
    .vehicle("X1", { "1": "constant-feed RD 6 fuse:30", "2": "constant-feed RD 1.5 fuse:10" })
    .module("A1", {
      role: "receiver",
      signalGround: "joined",
      rows: {
        "+": "constant-feed 2A",
        GND: "ground",
        L: "line-front-left-signal gives",
        S: "line-front-left-shield gives",
      },
    })
    .module("A2", {
      role: "amplifier",
      signalGround,
      rows: {
        "+": "constant-feed 20A",
        GND: "ground",
        L: "line-front-left-signal takes",
        S: "line-front-left-shield takes",
      },
    })
    .part("ground", "XE1", { surface: "bare-metal" })
    .part("ground", "XE2", { surface: "bare-metal" })
    .wire("X1.2", "A1.+", "RD", { area_mm2: 1.5, length_m: 1 })
    .wire("A1.GND", "XE1", "BK", { area_mm2: 1.5, length_m: 0.5 })
    .wire("X1.1", "A2.+", "RD", { area_mm2: 6, length_m: 3 })
    .wire("A2.GND", "XE2", "BK", { area_mm2: 6, length_m: 0.5 })
    .wire("A1.L", "A2.L", "WH", { length_m: 4 })
    .wire("A1.S", "A2.S", "BK", { length_m: 4 })
    .cable("WC1", "shielded", ["W5"], "W6");

export default defineExample({
  page: [
    "Two units that stand on different grounds are never quite at the same volts while current flows. If the shield of a sound lead joins their signal grounds, some of the vehicle's current takes that way, and one hears the engine.",
    "Unplug the line lead at the far unit. If the whine stops, it was a loop. One ground for both, or an input that keeps its signal ground apart, opens it.",
  ],
  trips: () => sound("joined"),
  quiet: () => sound("isolated"),
  quietBecause: "The amplifier keeps its signal ground apart from its supply ground.",
});
