import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const pair = () =>
  build()
    .vehicle("X1", { "3": "can-high OG/GN", "4": "can-low OG/BN" })
    .unit("X2", { "3": "can-high OG", "4": "can-low BN" })
    .wire("X1.3", "X2.3", "OG", { length_m: 0.6 })
    .wire("X1.4", "X2.4", "BN", { length_m: 0.6 });

export default defineExample({
  page: [
    "The two leads of a CAN pair are twisted so that whatever couples into the one couples into the other as well, and the difference between them stays clean.",
    "At a housing the twist has to be opened. Workshop manuals allow some 100 mm of it, and want both leads of one length.",
  ],
  trips: () => pair(),
  quiet: () => pair().cable("WC1", "twisted-pair", ["W1", "W2"]),
  quietBecause: "The two leads are one twisted pair from housing to housing.",
});
