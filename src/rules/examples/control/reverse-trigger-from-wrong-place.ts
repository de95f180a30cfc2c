import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const rear = () =>
  build()
    .vehicle("X1", { "1": "reverse GN/WH 0.75 fuse:10", "2": "fog-rear GY/YE 0.75 fuse:10" })
    .unit("X2", { "3": "camera-trigger GN 0.5" });

export default defineExample({
  page: [
    "The trigger wire of a camera display has to be live in reverse and at no other time. At the rear cluster the leads of the brake, fog, tail and reversing lamps lie side by side, and it is easy to take the wrong one.",
    "Measure it in every state: about 12 V in reverse, nothing with the key on, the lights on, the brake pressed.",
  ],
  trips: () => rear().wire("X1.2", "X2.3").path("X1.1", "XC1"),
  quiet: () => rear().wire("X1.1", "X2.3").path("X1.2", "XC1"),
  quietBecause: "This lead feeds the reversing lamp.",
});
