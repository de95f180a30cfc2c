import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const lamp = () =>
  build()
    .vehicle("X1", {
      "1": "reverse GN fuse:10 watched",
      "2": "ground BN",
      "3": "constant-feed RD fuse:10",
    })
    .part("load", "E1", { type: "lamp", name: "loading lamp", current_A: 2, function: "work-lamp" })
    .path("E1.−", "XJ1", "X1.2");

export default defineExample({
  page: [
    "In many vehicles a controller drives the lamps. It cuts their supply into pulses to spare them, tests them with weak pulses while they are off, and counts what they draw. Whatever else is fed from such an output flickers or falls out, and the controller reports a failed lamp.",
    "The output may say that reverse is engaged; it may not feed anything but its own lamp. Let it drive the coil of a relay with a diode across it, and take the power from a fuse.",
  ],
  trips: () => lamp().path("X1.1", "E1.+").path("X1.3", "XC1"),
  quiet: () =>
    lamp()
      .part("relay", "K1", { poles: "make", suppression: "diode" })
      .path("X1.1", "K1.86")
      .wire("K1.85", "XJ1")
      .path("X1.3", "K1.30")
      .path("K1.87", "E1.+"),
  quietBecause: "The lamp's output only drives a relay's coil; the loading lamp is fed from a fuse.",
});
