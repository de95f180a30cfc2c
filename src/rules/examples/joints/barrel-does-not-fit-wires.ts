import { defineExample } from "../example.ts";
import { lamp } from "./lamp.ts";

export default defineExample({
  page: [
    "The colour of an insulated crimp says what it holds: red up to 1.5 mm², blue 1.5 to 2.5 mm², yellow 4 to 6 mm². Several wires on one side count together.",
    "In a barrel too large the wire slips out; in one too small strands are left outside. Pull at every crimp by hand.",
  ],
  trips: () => lamp({ method: "crimped-butt", barrel: "yellow", cover: "sleeve" }),
  quiet: () => lamp({ method: "crimped-butt", barrel: "red", cover: "sleeve" }),
  quietBecause: "Red is the barrel for 0.5 mm².",
});
