import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const line = () =>
  build()
    .module("A1", {
      name: "radio receiver",
      role: "receiver",
      rows: { "1": "line-rear-left-signal WH", "2": "line-rear-left-shield BK" },
    })
    .module("A2", {
      name: "amplifier",
      role: "amplifier",
      rows: { "1": "line-rear-left-signal takes WH", "2": "line-rear-left-shield takes BK" },
    })
    .wire("A1.1", "A2.1")
    .wire("A1.2", "A2.2");

export default defineExample({
  page: [
    "What goes out by one lead comes back by the other. Side by side the two hear the same noise, and it cancels; apart they are the two sides of a loop that picks up every field between them.",
    "It happens where one lead of a pair is missing in a cable and a single wire is laid to help out, often down the other side of the vehicle.",
  ],
  trips: () => line().cable("WC1", "shielded-pair", ["W1"]),
  quiet: () => line().cable("WC1", "shielded", ["W1"], "W2"),
  quietBecause: "The shield of the cable is the return of the core inside it.",
});
