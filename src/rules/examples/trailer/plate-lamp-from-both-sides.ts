import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const rear = () =>
  build()
    .vehicle("X1", {
      "5": "tail-right BN 1.5 fuse:7.5",
      "7": "tail-left BK 1.5 fuse:7.5",
      "3": "ground WH 2.5",
    })
    .part("load", "E1", { type: "lamp", function: "plate-lamp", current_A: 0.4 })
    .wire("E1.−", "X1.3");

export default defineExample({
  page: [
    "Left and right tail lamps are two circuits with a fuse each. A plate lamp that is fed from both ties them together: they feed one another past their fuses, and a parking lamp on one side lights all.",
  ],
  trips: () => rear().path("X1.5", "XJ1", "E1.+").wire("X1.7", "XJ1"),
  quiet: () => rear().wire("X1.7", "E1.+").wire("X1.5", "XC1"),
  quietBecause: "The plate lamp hangs on the left side alone.",
});
