import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const lead = (strands: "solid" | "stranded") =>
  build()
    .vehicle("X1", { "1": "illumination GY 0.5 fuse:5", "2": "ground BN" })
    .part("load", "E1", { type: "lamp", current_A: 0.2, function: "illumination" })
    .wire("X1.1", "E1.+", "GY", { strands, area_mm2: 0.5 })
    .wire("E1.−", "X1.2", "BN", { strands: "stranded", area_mm2: 0.5 });

export default defineExample({
  page: [
    "House wire has one solid core. In a vehicle it is shaken day and night, and it breaks where it is held: at the terminal, at the clip.",
    "Crimp terminals are made for strands and do not grip a solid core. Use stranded copper wire made for vehicles.",
  ],
  trips: () => lead("solid"),
  quiet: () => lead("stranded"),
  quietBecause: "The lead is stranded.",
});
