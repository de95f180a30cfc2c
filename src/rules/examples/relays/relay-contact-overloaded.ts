import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const heater = (rating_A: number) =>
  build()
    .vehicle("X1", { "1": "constant-feed RD 10 fuse:60", "3": "ground BN 10" })
    .part("switch", "S1", { operatedBy: "hand" })
    .part("relay", "K1", { poles: "make", suppression: "resistor", rating_A })
    .part("load", "E1", { type: "heater", function: "heater-control", current_A: 40 })
    .path("X1.1", "XJ1", "K1.30")
    .path("XJ1", "S1", "K1.86")
    .path("K1.85", "XJ2", "X1.3")
    .wire("K1.87", "E1.+")
    .wire("E1.−", "XJ2")
    .change("W1", { area_mm2: 10 })
    .change("W2", { area_mm2: 10 })
    .change("W3", { area_mm2: 10 })
    .change("W4", { area_mm2: 10 })
    .change("W5", { area_mm2: 10 })
    .change("W6", { area_mm2: 10 })
    .change("W7", { area_mm2: 10 })
    .change("W8", { area_mm2: 10 });

export default defineExample({
  page: [
    "A contact that carries more than it is made for welds together. The load then stays on, whatever the switch does, until the fuse goes or the battery is flat.",
    "The figure on the relay is for a heater's kind of load; a motor or a cold lamp draws many times its current when it starts.",
  ],
  trips: () => heater(30),
  quiet: () => heater(70),
  quietBecause: "This contact is rated above what the heater draws.",
});
