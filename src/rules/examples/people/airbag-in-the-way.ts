import type { Run } from "../../../graph/harness.ts";
import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const loom = (near: Run["near"]) =>
  build()
    .vehicle("X1", { "1": "mute BN" })
    .unit("X2", { "1": "mute BN" })
    .wire("X1.1", "X2.1", "BN")
    .run("R1", { zone: "cabin", near: [...near] }, ["W1"]);

export default defineExample({
  page: [
    "Bags unfold from the wheel, the dash, the knees, the pillars, the roof rail and the sides of seats, within hundredths of a second. What lies in their way is thrown at somebody, or keeps the bag from its place.",
    "Pillars and roof rails look like the natural way for an antenna or a camera lead. Where a bag lies behind the trim, only the maker's instructions say what may be fastened there.",
  ],
  trips: () => loom(["airbag"]),
  quiet: () => loom([]),
  quietBecause: "The run keeps clear of airbags.",
});
