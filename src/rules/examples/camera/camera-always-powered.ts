import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const van = () =>
  build()
    .vehicle("X1", {
      "1": "constant-feed RD 1.5 fuse:10 spare",
      "2": "ground BN 1.5",
      "3": "ignition-feed RD/BK 0.75 fuse:10 spare",
    })
    .module("A1", {
      name: "rear camera",
      role: "camera",
      rows: { "1": "camera-power RD 0.5 0.2A", "2": "ground BK 0.5" },
    })
    .wire("X1.2", "A1.2");

export default defineExample({
  page: [
    "A camera draws 0.1 to 0.3 A as long as it is fed. On a feed that is live with the key off it empties the battery within days, and its electronics are warm all their life.",
    "A feed that is live in reverse will do, and so will one that is live with the key on, with the picture chosen by the display.",
  ],
  trips: () => van().wire("X1.1", "A1.1").path("X1.3", "XC1"),
  quiet: () => van().wire("X1.3", "A1.1").path("X1.1", "XC1"),
  quietBecause: "The camera is fed with the key on, and dead with it off.",
});
