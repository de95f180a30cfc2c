import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const boxes = () =>
  build()
    .vehicle("X1", { "2": "switched-feed YE fuse:5", "5": "steering-key-1 gives" })
    .unit("X2", { "2": "switched-feed RD", "3": "ground BK", "5": "steering-key-1 GY takes" })
    .wire("X2.3", "XE1");

export default defineExample({
  page: [
    "Steering-wheel keys are a ladder of resistors. The radio puts a few volts on the line and reads how much of it each button leaves.",
    "Battery volts on that line are more than the radio's input bears, and a pressed button then shorts the feed through a small resistor.",
  ],
  trips: () => boxes().path("X1.2", "XJ1", "X2.2").wire("XJ1.2", "X2.5"),
  quiet: () => boxes().wire("X1.2", "X2.2").wire("X1.5", "X2.5"),
  quietBecause: "The line joins the keys and the radio and nothing else.",
});
