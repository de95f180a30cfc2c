import { defineExample } from "../example.ts";
import { lamp } from "./lamp.ts";

export default defineExample({
  page: [
    "A soldered joint is bare metal, and stiff where the solder ends. A sleeve that grips the insulation on both sides keeps it off its neighbours and takes the bending.",
    "A crimp in a coloured barrel brings its own insulation; one in a bare barrel does not.",
  ],
  trips: () => lamp({ method: "solder-and-sleeve", cover: "none" }),
  quiet: () => lamp({ method: "crimped-butt", barrel: "red", cover: "none" }),
  quietBecause: "The red barrel of a crimp is insulated as it comes.",
});
