import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const two = () =>
  build()
    .vehicle("X1", { "1": "illumination GY", "2": "mute BN" })
    .unit("X2", { "1": "illumination OG", "2": "mute BN" })
    .wire("X1.2", "X2.2", "BN");

export default defineExample({
  page: [
    "Both charts have a lead for the same thing, and the two are not joined. That is how dash lighting, reverse, speed and parking brake are forgotten.",
    "If it is meant so, mark the cavities as spares: then it has been decided, and the papers say so.",
  ],
  trips: two,
  quiet: () => two().wire("X1.1", "X2.1", "GY"),
  quietBecause: "Illumination is joined to illumination.",
});
