import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const boxes = () =>
  build()
    .module("A1", {
      name: "antenna on the roof",
      side: "vehicle",
      role: "antenna",
      rows: { "1": "antenna-signal gives", "2": "antenna-ground gives" },
    })
    .module("A2", {
      name: "radio receiver",
      role: "receiver",
      rows: { "1": "antenna-signal takes", "2": "antenna-ground takes" },
    });

export default defineExample({
  page: [
    "Coaxial cable guides its signal between core and shield, and works only as long as their distance stays the same. A splice breaks that: signal is thrown back at the joint and leaks out there.",
    "It can be measured at once on a receiver's weakest station, and it gets worse with damp. Buy the cable long enough, or join it with connectors that are made for it.",
  ],
  trips: () =>
    boxes()
      .part("splice", "XJ1", { method: "solder-and-sleeve", cover: "adhesive-sleeve" })
      .path("A1.1", "XJ1", "A2.1")
      .wire("A1.2", "A2.2")
      .cable("WC1", "coax", ["W1", "W2"], "W3"),
  quiet: () => boxes().wire("A1.1", "A2.1").wire("A1.2", "A2.2").cable("WC1", "coax", ["W1"], "W2"),
  quietBecause: "One length of cable goes from the antenna to the receiver.",
});
