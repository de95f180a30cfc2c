import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const bay = () =>
  build()
    .vehicle("X1", { "1": "constant-feed RD fuse:15", "2": "ground BN", "3": "illumination GY fuse:5" })
    .module("A1", { role: "receiver", name: "radio receiver" })
    .receptacle("X2", "A1", { "1": "constant-feed YE", "2": "switched-feed RD", "3": "ground BK" })
    .path("X1.1", "X2.1")
    .path("X1.2", "XJ1", "X2.3");

export default defineExample({
  page: [
    "Many vehicles have no lead that comes with the key at the radio any more: the radio is woken over the data bus. The new receiver still has its switched input, and there is a temptation to put it on the next lead that looks live.",
    "On the illumination lead it plays only at night. An interface module that reads the bus gives a true accessory output; where there is none, a fused feed from the fuse box does.",
  ],
  trips: () => bay().path("X1.3", "X2.2"),
  quiet: () =>
    bay()
      .module("A2", {
        role: "interface",
        name: "interface module",
        rows: { "1": "constant-feed", "2": "ground", "3": "switched-feed gives" },
      })
      .path("X1.3", "XC1")
      .wire("X1.1", "A2.1")
      .path("XJ1", "A2.2")
      .path("A2.3", "X2.2"),
  quietBecause: "An interface module gives the switched feed.",
});
