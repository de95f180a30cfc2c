import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const lamp = (least_V: number, most_V: number) =>
  build()
    .settings({ systemVoltage_V: 24 })
    .vehicle("X1", { "1": "constant-feed RD fuse:10", "2": "ground BN" })
    .part("load", "E1", {
      type: "lamp",
      current_A: 2,
      function: "constant-feed",
      voltage_V: { least_V, most_V },
    })
    .path("X1.1", "S1", "E1.+")
    .path("E1.−", "X1.2");

export default defineExample({
  page: [
    "Trucks and coaches have 24 V, most other vehicles 12 V, and some leads have their own: a factory camera may be fed with 6 V. A part for fewer volts is destroyed; one for more never starts.",
    "Read the range off the plate of the part and enter it. A converter makes the right volts where the part cannot be exchanged.",
  ],
  trips: () => lamp(10, 16),
  quiet: () => lamp(10, 32),
  quietBecause: "The lamp is made for 10 to 32 V, so it bears 24 V.",
});
