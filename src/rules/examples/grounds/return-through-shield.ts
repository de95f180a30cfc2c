import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const sound = () =>
  build()
    .vehicle("X1", {
      "1": "constant-feed RD 10 fuse:40",
      "2": "constant-feed RD 1.5 fuse:15",
      "3": "ground BN 1.5",
    })
    .module("A1", {
      role: "receiver",
      rows: {
        "+": "constant-feed 1.5",
        GND: "ground 1.5",
        L: "line-front-left-signal gives",
        S: "line-front-left-shield gives",
      },
    })
    .module("A2", {
      role: "amplifier",
      rows: {
        "+": "constant-feed 10 20A",
        GND: "ground",
        L: "line-front-left-signal takes",
        S: "line-front-left-shield takes",
      },
    })
    .wire("X1.2", "A1.+")
    .wire("A1.GND", "X1.3")
    .wire("X1.1", "A2.+")
    .wire("A1.L", "A2.L", "WH")
    .wire("A1.S", "A2.S", "BK")
    .cable("WC1", "shielded", ["W4"], "W5");

export default defineExample({
  page: [
    "An amplifier without a ground often plays all the same. Its current goes back through the shield of the line lead into the receiver, and from there to the frame.",
    "The shield is thin, and the plug grows hot until it melts. Measure with the line plugs pulled: the unit must still be grounded.",
  ],
  trips: () => sound(),
  quiet: () =>
    sound().part("ground", "XE1", { surface: "bare-metal" }).wire("A2.GND", "XE1", "BK", { area_mm2: 10 }),
  quietBecause: "The amplifier has a ground lead of its own, as thick as its feed.",
});
