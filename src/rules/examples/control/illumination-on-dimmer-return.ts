import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const dash = (words = "") =>
  build()
    .vehicle("X1", { "2": "dimmer-return GY/BN 0.5" })
    .unit("X2", { "4": `illumination OG/WH 0.5 ${words}` });

export default defineExample({
  page: [
    "Where the dimmer works on the ground side, the lead behind the radio that changes with it is no feed. It is the return of the dash lamps.",
    "A screen that waits for 12 V gets nothing from it, or pulls it the wrong way. Take the feed of the parking or dash lamps.",
  ],
  trips: () => dash().wire("X1.2", "X2.4"),
  quiet: () => dash("acts-on-ground").wire("X1.2", "X2.4"),
  quietBecause: "The chart of this unit says that its lead acts on ground.",
});
