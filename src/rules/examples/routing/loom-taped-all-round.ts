import { defineExample } from "../example.ts";
import { loom } from "./loom.ts";

export default defineExample({
  page: [
    "A loom wound in tape from end to end looks neat and cannot be opened. To follow one core somebody has to slit all of it.",
    "Use split loom or ties, and tape only where leads branch off.",
  ],
  trips: () => loom({ zone: "cabin", covering: "cloth-tape", length_m: 1.5 }),
  quiet: () => loom({ zone: "cabin", covering: "cloth-tape", length_m: 0.3 }),
  quietBecause: "300 mm of tape are what the code of practice lets pass.",
});
