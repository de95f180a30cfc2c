import { defineExample } from "../example.ts";
import { lamp } from "./lamp.ts";

export default defineExample({
  page: [
    "One barrel cannot grip a thin wire on one side and a thick one on the other: pressed for the thick one it leaves the thin one loose.",
    "There are step-down crimps for two sizes. Solder in a sleeve does not mind.",
  ],
  trips: () => lamp({ method: "crimped-butt", cover: "adhesive-sleeve" }, { area_mm2: 4 }),
  quiet: () => lamp({ method: "crimped-butt", cover: "adhesive-sleeve" }, { area_mm2: 1 }),
  quietBecause: "A red barrel holds 0.5 as well as 1 mm².",
});
