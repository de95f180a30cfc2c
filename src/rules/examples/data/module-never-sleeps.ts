import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const tracker = (sleeps: "yes" | "no") =>
  build()
    .vehicle("X1", {
      "4": "ground BN",
      "6": "can-high OG",
      "14": "can-low BN",
      "16": "constant-feed RD fuse:5",
    })
    .module("A1", {
      role: "interface",
      sleeps,
      rows: { "4": "ground takes", "6": "can-high", "14": "can-low", "16": "constant-feed takes" },
    })
    .wire("X1.4", "A1.4")
    .wire("X1.6", "A1.6")
    .wire("X1.14", "A1.14")
    .wire("X1.16", "A1.16");

export default defineExample({
  page: [
    "With the key off the control units of a vehicle go to sleep when nobody speaks on the bus any more. A module that keeps speaking, or only listens in a way that wakes the others, keeps them all up.",
    "The module itself may draw next to nothing: it is the others that empty the battery. Measure the drain half an hour after locking.",
  ],
  trips: () => tracker("no"),
  quiet: () => tracker("yes"),
  quietBecause: "This module goes to sleep when the bus is quiet.",
});
