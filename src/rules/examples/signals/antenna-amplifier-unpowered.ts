import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const van = () =>
  build()
    .module("A1", {
      name: "antenna with amplifier",
      side: "vehicle",
      role: "antenna",
      rows: { "1": "antenna-signal gives", "2": "antenna-power takes BU" },
    })
    .module("A2", {
      name: "radio receiver",
      role: "receiver",
      rows: { "1": "antenna-signal takes", "2": "amplifier-turn-on BU/WH 0.3A spare" },
    })
    .wire("A1.1", "A2.1");

export default defineExample({
  page: [
    "Short antennas, and those in a window, have an amplifier in their foot. It is fed by a lead of its own, often blue, or through the coaxial cable by an adapter with a blue lead.",
    "Without volts it passes next to nothing: hiss, and only the strongest stations. Where the receiver has no antenna power, its amplifier turn-on will do, if its output allows the current.",
  ],
  trips: () => van().path("A2.2", "XC1"),
  quiet: () => van().wire("A2.2", "A1.2"),
  quietBecause: "The receiver has no antenna power, and its amplifier turn-on feeds the antenna.",
});
