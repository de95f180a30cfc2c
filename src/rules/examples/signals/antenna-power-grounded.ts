import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const boxes = () =>
  build()
    .module("A1", {
      name: "antenna with amplifier",
      side: "vehicle",
      role: "antenna",
      rows: { "1": "antenna-ground gives", "2": "antenna-power takes BU" },
    })
    .module("A2", {
      name: "radio receiver",
      role: "receiver",
      rows: { "1": "antenna-ground takes", "2": "antenna-power BU 0.3A" },
    })
    .wire("A1.1", "A2.1")
    .wire("A1.2", "A2.2");

export default defineExample({
  page: [
    "Antenna power is an output of the receiver that gives 0.1 to 0.3 A. Joined to the antenna's shield or to the frame, it is shorted as soon as the radio is turned on.",
    "In an adapter the blue lead and the braid of the coaxial cable lie close together: one strand is enough.",
  ],
  trips: () => boxes().wire("A2.2", "A2.1", "BU"),
  quiet: () => boxes(),
  quietBecause: "Antenna power goes to the antenna's amplifier, the shield to the shield.",
});
