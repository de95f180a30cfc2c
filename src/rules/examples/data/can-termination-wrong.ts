import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const bus = () =>
  build()
    .module("A1", { role: "interface", rows: { H: "can-high", L: "can-low" } })
    .module("A2", { role: "display", rows: { H: "can-high", L: "can-low" } })
    .wire("A1.H", "A2.H", "OG")
    .wire("A1.L", "A2.L", "BN");
const terminated = () =>
  bus()
    .part("resistor", "R1", { resistance_ohm: 120 })
    .path("A1.H", "R1", "A1.L")
    .part("resistor", "R2", { resistance_ohm: 120 })
    .path("A2.H", "R2", "A2.L");

export default defineExample({
  page: [
    "At each of the two ends of a CAN bus a resistor of 120 Ω takes up the signal, so that it does not come back as an echo. Two of them in parallel read 60 Ω on a meter, with the power off.",
    "120 Ω says that one is missing, or that the bus is cut; 40 Ω says that there are three. Many boxes have one inside: their papers say so.",
  ],
  trips: () => terminated().part("resistor", "R3", { resistance_ohm: 120 }).path("A1.H", "R3", "A1.L"),
  quiet: () => terminated(),
  quietBecause: "One resistor of 120 Ω stands at each end.",
});
