import { defineExample } from "../example.ts";
import { lamp } from "./lamp.ts";

export default defineExample({
  page: [
    "Insulating tape holds by its glue, and the glue lets go in a hot car. What is left is a sticky tail and a bare joint.",
    "A sleeve shrunk over the joint stays. Where a joint is made into a loom that cannot be opened, one code of practice allows tape with cloth tape over it.",
  ],
  trips: () => lamp({ method: "solder-and-sleeve", cover: "tape" }),
  quiet: () => lamp({ method: "solder-and-sleeve", cover: "cloth-over-tape" }),
  quietBecause: "Cloth tape over the tape holds it: FCS 1362 allows this for a joint into an existing loom.",
});
