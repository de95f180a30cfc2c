import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const screen = () =>
  build()
    .vehicle("X1", { "1": "parking-brake GN/WH 0.5" })
    .unit("X2", { "9": "parking-brake GN 0.5", "10": "mute BN 0.5" });

export default defineExample({
  page: [
    "Two inputs on one lead act together, whichever of them is meant. A mute lead tied to the parking-brake lead silences the sound whenever the brake is set.",
    "Several inputs for the same job may share a lead: a trigger of the display and one of the recorder, both for reverse.",
  ],
  trips: () => screen().wire("X1.1", "X2.9").wire("X2.9", "X2.10"),
  quiet: () => screen().wire("X1.1", "X2.9").path("X2.10", "XC1"),
  quietBecause: "Each input has a lead of its own.",
});
