import { defineExample } from "../example.ts";
import { lamp } from "./lamp.ts";

export default defineExample({
  page: [
    "The screw cap of house wiring bites into solid wire in a box that never moves. On fine strands in a moving vehicle it unscrews itself.",
    "Crimp the joint with a barrel of the right size, or solder and sleeve it.",
  ],
  trips: () => lamp({ method: "twist-on-nut", cover: "housing" }),
  quiet: () => lamp({ method: "crimped-butt", barrel: "red", cover: "sleeve" }),
  quietBecause: "A crimp in a red barrel suits 0.5 mm².",
});
