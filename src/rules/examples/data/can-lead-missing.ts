import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const boxes = () =>
  build()
    .vehicle("X1", { "3": "can-high OG/GN", "4": "can-low OG/BN" })
    .unit("X2", { "3": "can-high OG", "4": "can-low BN" });

export default defineExample({
  page: [
    "The two leads of a CAN pair work together. With one of them missing a fast bus is dead, or loses a message now and then, which is worse to find.",
    "Count the leads of each pair at both housings before the tape goes on.",
  ],
  trips: () => boxes().wire("X1.3", "X2.3"),
  quiet: () => boxes().path("X1.3", "XJ1", "X2.3").path("X1.4", "XJ2", "X2.4"),
  quietBecause: "Both leads of the pair arrive, each through a joint of its own.",
});
