import { type Build, build } from "../build.ts";
import { defineExample } from "../example.ts";

const beside = (impedance_ohm: number): Build =>
  build()
    .module("A1", {
      name: "radio receiver",
      role: "receiver",
      outputs: "bridged",
      leastLoad_ohm: 4,
      rows: { "1": "speaker-rear-left-plus GN", "2": "speaker-rear-left-minus GN/BK" },
    })
    .part("speaker", "P1", { position: "rear-left", impedance_ohm })
    .part("speaker", "P2", { position: "rear-left", impedance_ohm })
    .path("A1.1", "XJ1", "P1.+")
    .path("A1.2", "XJ2", "P1.−")
    .wire("XJ1", "P2.+", "GN")
    .wire("XJ2", "P2.−", "GN/BK");

export default defineExample({
  page: [
    "Speakers side by side share the volts and add their currents: two of 4 Ω are 2 Ω, three are 1.33 Ω, 4 Ω beside 8 Ω is 2.67 Ω. In series they add up.",
    "The plate or the sheet of the unit names the least load of a channel. Below it the output gets hot and shuts down, at first only when it plays loud.",
  ],
  trips: () => beside(4),
  quiet: () => beside(8),
  quietBecause: "Two speakers of 8 Ω side by side are 4 Ω, which the receiver allows.",
});
