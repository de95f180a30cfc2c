import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const tweeter = () =>
  build()
    .module("A1", {
      name: "radio receiver",
      role: "receiver",
      outputs: "bridged",
      rows: { "1": "speaker-front-left-plus WH", "2": "speaker-front-left-minus WH/BK" },
    })
    .part("speaker", "P1", { position: "front-left", type: "tweeter", impedance_ohm: 4 })
    .wire("A1.2", "P1.−");

export default defineExample({
  page: [
    "A tweeter is made for high notes only. A capacitor in one of its leads, or a crossover, keeps the bass away from it.",
    "The capacitor is often a small part in a sleeve on the lead, and gets lost when the lead is made new. A crossover box is drawn as a module of its own.",
  ],
  trips: () => tweeter().wire("A1.1", "P1.+"),
  quiet: () => tweeter().part("capacitor", "C1", { capacitance_uF: 4.7 }).path("A1.1", "C1", "P1.+"),
  quietBecause: "The capacitor C1 stands in the plus lead.",
});
