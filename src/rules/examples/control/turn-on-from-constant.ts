import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const amplifier = () =>
  build()
    .vehicle("X1", { "1": "constant-feed RD 0.75 fuse:5", "2": "switched-feed YE 0.75 fuse:5" })
    .module("A2", { role: "amplifier", rows: { REM: "amplifier-turn-on takes 0.5" } });

export default defineExample({
  page: [
    "An amplifier that is never told to sleep draws its idle current day and night. On a lead that is live with the key off, it empties the battery.",
    "Take the turn-on from the source's own lead. Where a source has none, a feed that comes with the key will do.",
  ],
  trips: () => amplifier().wire("X1.1", "A2.REM").path("X1.2", "XC1"),
  quiet: () => amplifier().wire("X1.2", "A2.REM").path("X1.1", "XC1"),
  quietBecause: "This feed comes and goes with the key.",
});
