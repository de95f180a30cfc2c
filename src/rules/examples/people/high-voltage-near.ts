import type { Run } from "../../../graph/harness.ts";
import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const loom = (near: Run["near"]) =>
  build()
    .vehicle("X1", { "1": "mute BN" })
    .unit("X2", { "1": "mute BN" })
    .wire("X1.1", "X2.1", "BN")
    .run("R1", { zone: "outside", near: [...near] }, ["W1"]);

export default defineExample({
  page: [
    "Under the floor of an electric or hybrid vehicle the natural way for a loom is often the one that the high-voltage cables have taken. It must not share their clips, holes or covers.",
    "Leave such a stretch to those who are licensed for it, or go another way round.",
  ],
  trips: () => loom(["high-voltage"]),
  quiet: () => loom([]),
  quietBecause: "The run keeps clear of high voltage.",
});
