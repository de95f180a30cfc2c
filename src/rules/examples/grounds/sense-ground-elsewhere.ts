import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const keys = () =>
  build()
    .vehicle("X1", { "1": "steering-key-1 GN gives", "2": "steering-key-ground BN", "3": "ground BN" })
    .module("A1", { role: "interface", rows: { K: "steering-key-1 takes", G: "ground" } })
    .wire("X1.1", "A1.K")
    .wire("A1.G", "X1.3");

export default defineExample({
  page: [
    "Steering-wheel keys are a ladder of resistors. The box that reads them measures a few tenths of a volt between the line and its own ground.",
    "If the ladder returns to another ground, whatever flows between the two grounds is added to the reading, and a key answers as its neighbour.",
  ],
  trips: () => keys().part("ground", "XE1", { surface: "bare-metal" }).wire("X1.2", "XE1"),
  quiet: () => keys().wire("X1.2", "A1.G"),
  quietBecause: "The return of the keys comes to the box that reads them.",
});
