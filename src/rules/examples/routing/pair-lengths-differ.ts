import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const pair = (second_m: number) =>
  build()
    .vehicle("X1", { "1": "speaker-rear-left-plus GN 0.75", "2": "speaker-rear-left-minus GN/BK 0.75" })
    .part("speaker", "P1", { position: "rear-left" })
    .wire("X1.1", "P1.+", "GN", { length_m: 1, area_mm2: 0.75 })
    .wire("X1.2", "P1.−", "GN/BK", { length_m: second_m, area_mm2: 0.75 })
    .cable("WC1", "twisted-pair", ["W1", "W2"]);

export default defineExample({
  page: [
    "The two wires of a twisted pair stay together only if they are of one length. With one longer, the twist opens, and noise gets in where it does.",
    "Five per cent is a threshold of our own: it is what one sees.",
  ],
  trips: () => pair(1.1),
  quiet: () => pair(1.04),
  quietBecause: "The two differ by less than five per cent.",
});
