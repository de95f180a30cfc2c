import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const two = () =>
  build()
    .vehicle("X1", { "1": "ignition-feed BK fuse:10", "3": "ground BN" })
    .part("relay", "K1", { poles: "changeover", suppression: "resistor" })
    .part("load", "E1", { type: "lamp", function: "work-lamp", current_A: 2 })
    .part("switch", "S1", { operatedBy: "hand" })
    .path("X1.1", "XJ1", "K1.30")
    .path("K1.85", "XJ2", "X1.3")
    .wire("E1.−", "XJ2");

export default defineExample({
  page: [
    "A coil that is fed through its own contact at rest cuts its feed as soon as it pulls, lets go, and pulls again: it buzzes, as a bell does.",
    "Feed the coil from before the contact that opens.",
  ],
  trips: () => two().path("K1.87a", "S1", "K1.86").wire("K1.87", "E1.+"),
  quiet: () => two().path("XJ1", "S1", "K1.86").wire("K1.87", "E1.+"),
  quietBecause: "The coil is fed from before the contact.",
});
