import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const sockets = () =>
  build()
    .vehicle("X1", { "1": "constant-feed RD fuse:20", "2": "switched-feed YE fuse:5", "3": "ground BN" })
    .part("relay", "K1", { poles: "make", suppression: "resistor" })
    .part("load", "E1", { type: "other", function: "power-socket-feed", current_A: 5, standby_A: 0 })
    .path("K1.85", "XJ2", "X1.3")
    .wire("K1.87", "E1.+")
    .wire("E1.−", "XJ2");

export default defineExample({
  page: [
    "A coil draws some 150 mA for as long as it pulls. Fed at all times, it empties half of a battery of 50 Ah in a week, and keeps on what it switches besides.",
    "The trigger comes from the accessory position, or from an output of what needs the relay.",
  ],
  trips: () => sockets().path("X1.1", "XJ1", "K1.30").wire("XJ1", "K1.86").wire("X1.2", "XC1"),
  quiet: () => sockets().wire("X1.1", "K1.30").wire("X1.2", "K1.86"),
  quietBecause: "The coil is fed with the key at accessory or run, and rests when it is off.",
});
