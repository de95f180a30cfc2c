import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const fan = () =>
  build()
    .vehicle("X1", { "1": "constant-feed RD fuse:20", "2": "ignition-feed BK fuse:10", "3": "ground BN" })
    .part("relay", "K1", { poles: "make", suppression: "resistor" })
    .part("load", "E1", { type: "motor", function: "blower", current_A: 5 })
    .wire("X1.1", "K1.30")
    .path("K1.85", "XJ2", "X1.3")
    .wire("E1.−", "XJ2");

export default defineExample({
  page: [
    "A relay whose own output reaches its coil keeps itself pulled, after whatever started it is gone. The key goes off, and nothing else does.",
    "It comes about by a joint that was meant to save a lead: trigger and output in one. Two diodes part what may pull the coil from what the contact feeds.",
  ],
  trips: () =>
    fan().part("diode", "V1").path("X1.2", "V1", "XJ1", "K1.86").path("K1.87", "XJ1").wire("XJ1", "E1.+"),
  quiet: () => fan().path("X1.2", "K1.86").wire("K1.87", "E1.+"),
  quietBecause: "The coil hangs on the ignition alone, and the fan on the contact alone.",
});
