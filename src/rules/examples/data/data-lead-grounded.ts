import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const boxes = () =>
  build()
    .vehicle("X1", { "4": "lin VT", "8": "ground BN" })
    .unit("X2", { "4": "lin VT", "5": "shield-drain" });

export default defineExample({
  page: [
    "A box sends on a line by pulling it to ground for a moment. A line that lies on ground for good looks busy to all, and nobody sends.",
  ],
  trips: () => boxes().path("X1.4", "XJ1", "X2.4").wire("XJ1.2", "X1.8"),
  quiet: () => boxes().wire("X1.4", "X2.4").wire("X2.5", "X1.8"),
  quietBecause: "Only the shield goes to ground.",
});
