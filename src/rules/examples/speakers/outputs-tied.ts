import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const amplifier = () =>
  build()
    .module("A1", {
      name: "factory amplifier",
      side: "vehicle",
      role: "amplifier",
      rows: { "1": "speaker-front-left-plus gives WH", "2": "speaker-front-left-minus gives WH/BK" },
    })
    .unit("X4", { "1": "speaker-front-left-plus WH", "2": "speaker-front-left-minus WH/BK" });

export default defineExample({
  page: [
    "An output drives its lead. Two outputs on one lead drive each other, and neither of them was made for that.",
    "It happens when a receiver is changed and the factory amplifier stays plugged in: its outputs go to the same speakers as the new receiver's. Look for every box that can send sound to the speaker, and unplug all but one.",
  ],
  trips: () => amplifier().wire("X4.1", "A1.1").wire("X4.2", "A1.2"),
  quiet: () =>
    amplifier()
      .part("speaker", "P1", { position: "front-left", impedance_ohm: 4 })
      .wire("X4.1", "P1.+")
      .wire("X4.2", "P1.−")
      .path("A1.1", "XC1")
      .path("A1.2", "XC2"),
  quietBecause:
    "The factory amplifier's leads are capped, each by itself, and only the receiver drives the speaker.",
});
