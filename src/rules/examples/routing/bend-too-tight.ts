import { defineExample } from "../example.ts";
import { loom } from "./loom.ts";

export default defineExample({
  page: [
    "Round a tight corner the wires on the outside are stretched and those on the inside crushed. A coaxial cable changes its shape there, and its signal suffers.",
    "Six diameters of the bundle are the least, measured at the inner side of the bend. The bundle's diameter is reckoned from the sizes of its wires.",
  ],
  trips: () => loom({ bend_mm: 10 }),
  quiet: () => loom({ bend_mm: 25 }),
  quietBecause: "The bundle is 3.4 mm thick, and 25 mm is more than six times that.",
});
