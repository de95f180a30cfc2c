import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const boxes = () =>
  build()
    .vehicle("X1", { "3": "can-high OG/GN", "4": "can-low OG/BN" })
    .unit("X2", { "3": "can-high OG", "4": "can-low BN" });

export default defineExample({
  page: [
    "A CAN bus speaks by the difference between two leads, high and low. Exchanged, every bit reads as its opposite, and the box that hears nonsense disturbs all others.",
    "With the power off, buzz each lead from housing to housing by its function, not by its colour.",
  ],
  trips: () => boxes().wire("X1.3", "X2.4").wire("X1.4", "X2.3"),
  quiet: () => boxes().wire("X1.3", "X2.3").wire("X1.4", "X2.4"),
  quietBecause: "High goes to high and low to low, although the colours differ.",
});
