import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const loom = (from: string, to: string) =>
  build()
    .vehicle("X1", { "1": "mute BN" })
    .unit("X2", { "1": "mute BN" })
    .wire("X1.1", "X2.1", "BN")
    .run("R1", { length_m: 2.4, from, to }, ["W1"]);

export default defineExample({
  page: [
    "A length means nothing without the two points that it lies between. From the tip of the contacts, the back of the housing or the break-out are three different lengths.",
    "Name the points on the run; the cut list then adds slack and terminations to a length that everybody measures alike.",
  ],
  trips: () => loom("", ""),
  quiet: () => loom("back of X1", "back of X2"),
  quietBecause: "The run says that it lies between the backs of the two housings.",
});
