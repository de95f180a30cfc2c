import { defineExample } from "../example.ts";
import { loom } from "./loom.ts";

export default defineExample({
  page: [
    "What a wire has too much is coiled up somewhere and rattles there until it chafes through.",
    "Up to a quarter more than its runs, or 0.3 m on short ones, is what a lead needs to come out of the loom and reach its contact.",
  ],
  trips: () => loom({ length_m: 2 }, { length_m: 3 }),
  quiet: () => loom({ length_m: 2 }, { length_m: 2.5 }),
  quietBecause: "2.5 m is a quarter more than the run, no further.",
});
