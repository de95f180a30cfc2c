import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const lamps = (one: string, other: string) =>
  build()
    .vehicle("X1", { "1": `illumination ${one} 0.5 fuse:5`, "2": `reverse ${other} 0.5 fuse:5` })
    .part("load", "E1", { type: "lamp", current_A: 0.2, function: "illumination" })
    .part("load", "E2", { type: "lamp", current_A: 1.7, function: "reverse" })
    .path("X1.1", "E1.+")
    .path("E1.−", "XE1")
    .path("X1.2", "E2.+")
    .path("E2.−", "XE2");

export default defineExample({
  page: [
    "By the light of a torch a brown tracer looks violet, and a grey one white. Two leads of one plug that differ in nothing else get exchanged.",
    "Put markers on both, and go by the number of the cavity.",
  ],
  trips: () => lamps("GN/VT", "GN/BN"),
  quiet: () => lamps("GN/VT", "GN/WH"),
  quietBecause: "Violet and white are told apart in any light.",
});
